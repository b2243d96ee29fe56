package witnessmark.logbook.sheets;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Lesson;
import witnessmark.domain.Standing;
import witnessmark.fit.result.LessonCheck;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Lessons to pick from, and those that keep a sheet from being signed. */
final class Lessons {
    private Lessons() {}

    /** Those as asked, the latest first: by which incident, what was learned. */
    static List<Choice> choices(SheetSight sight, Predicate<Lesson> asked) {
        return sight.facts().of(Lesson.class).where(asked).stream()
                .sorted(Comparator.comparing(
                                (Entry<Lesson> lesson) -> lesson.fact().from())
                        .reversed())
                .map(lesson -> new Choice(
                        lesson.id().text(),
                        Stream.of(incident(sight, lesson.fact()), lesson.fact().what())
                                .filter(Objects::nonNull)
                                .map(Object.class::cast)
                                .toList()))
                .toList();
    }

    private static @Nullable String incident(SheetSight sight, Lesson lesson) {
        return lesson.incident() == null ? null : sight.name(Incident.class, lesson.incident());
    }

    /** What was learned. */
    static String name(SheetSight sight, String key) {
        return sight.find(Lesson.class, key).map(lesson -> lesson.fact().what()).orElse("");
    }

    /**
     * Stops a sheet that would sign a build while lessons are not met, not answered and not accepted.
     *
     * @param field beside which it is said
     * @param when it would be signed
     */
    static void stop(ReadSheet in, SheetField field, Id<Build> build, Moment when) {
        SeeBuildSheet.of(in.sight().view(), build).ifPresent(page -> stop(in, field, page, when));
    }

    /** The same for a build that is written closed, of which there is no sheet yet. */
    static void stop(ReadSheet in, SheetField field, Build build, Moment when) {
        View view = in.sight().view();
        Entry<Build> written = new Entry<>(new Id<>(new UUID(0, 0)), build, Standing.IN_FORCE, null, 1);
        Facts facts = view.facts().with(List.of(written));
        View after = new View(facts, view.day(), view.zone(), view.ledger().after(facts), view.readOnly());
        SeeBuildSheet.of(after, written.id())
                .ifPresent(page -> stop(in, field, SeeBuildSheet.askedOf(after, page, when)));
    }

    /** The same for a sheet that is seen already. */
    static void stop(ReadSheet in, SheetField field, SheetPage page, Moment when) {
        stop(in, field, SeeBuildSheet.askedOf(in.sight().view(), page, when));
    }

    private static void stop(ReadSheet in, SheetField field, List<LessonCheck> asked) {
        List<LessonCheck> open = asked.stream().filter(LessonCheck::open).toList();
        if (!open.isEmpty()) {
            in.wrong(
                    field,
                    ProblemKind.LESSONS_OPEN,
                    open.size(),
                    open.stream().map(each -> each.lesson().fact().what()).collect(Collectors.joining("; ")));
        }
    }
}
