package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Says on a build sheet how a lesson is met. What is not met is accepted as it is with a reason, as anything is, or stays open.
 * A figure is met by being measured; here it can only be accepted.
 */
public final class AnswerLesson implements LogSheet {
    public static final SheetField BUILD = choice("answered_build", 2);
    public static final SheetField LESSON = choice("answered_lesson", 4);
    public static final SheetField MET = choice("answered_met", 1);
    public static final SheetField WORDS = text("answered_words", 3);
    public static final SheetField ACCEPTED = text("answered_accepted", 4);
    public static final SheetField WHEN = of("answered_on", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("answered_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "lesson_answer";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "lesson_answer",
                List.of(BUILD),
                List.of(LESSON),
                List.of(MET, WORDS),
                List.of(ACCEPTED),
                List.of(WHEN, WHEN_TIME, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(WHEN, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return SeeBuildSheet.all(sight.view()).stream()
                .filter(build -> build.fact().engine().equals(engine))
                .findFirst()
                .map(build -> Map.of(BUILD, build.id().text()))
                .orElse(Map.of());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(BUILD, WHEN, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "answered_build" ->
                SeeBuildSheet.all(sight.view()).stream()
                        .map(build -> Choice.of(
                                build.id().text(),
                                SheetNote.of(
                                        "of_build",
                                        sight.name(Engine.class, build.fact().engine()),
                                        build.fact().number())))
                        .toList();
            case "answered_lesson" -> Lessons.choices(sight, lesson -> mayConcern(lesson, typed, sight));
            case "answered_met" -> List.of(SheetWord.YES.choice(), SheetWord.NO.choice());
            default -> List.of();
        };
    }

    /** Whether its sheet asks it, or will once the part it is about is fitted. */
    private static boolean mayConcern(Lesson lesson, SheetTyped typed, SheetSight sight) {
        Id<EngineDesign> design = sight.find(Build.class, typed.text(BUILD))
                .map(build -> sight.facts()
                        .of(Engine.class)
                        .get(build.fact().engine())
                        .design())
                .orElse(null);
        return lesson.design() == null || design == null || lesson.design().equals(design);
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean figure = isFigure(typed, sight);
        return field.equals(MET) || field.equals(WORDS)
                ? !figure
                : !field.equals(ACCEPTED) || figure || typed.is(MET, SheetWord.NO);
    }

    private static boolean isFigure(SheetTyped typed, SheetSight sight) {
        return sight.find(Lesson.class, typed.text(LESSON))
                .map(lesson -> lesson.fact().kind() != null)
                .orElse(false);
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Build> build = in.chosen(BUILD, Build.class);
        Entry<Lesson> lesson = in.chosen(LESSON, Lesson.class);
        boolean figure = isFigure(in.typed(), in.sight());
        String met = figure ? SheetWord.NO.key() : in.needed(MET);
        boolean isMet = met.equals(SheetWord.YES.key());
        if (lesson != null) {
            in.note(LESSON, SheetNote.of(figure ? "lesson_figure" : "line", asked(lesson.fact())));
        }
        in.note(WORDS, SheetNote.of("answered_example"));
        String words = isMet ? in.needed(WORDS) : in.text(WORDS);
        in.note(ACCEPTED, SheetNote.of(figure ? "answered_figure" : "answered_open"));
        String accepted = figure ? in.needed(ACCEPTED) : isMet ? "" : in.text(ACCEPTED);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        if (lesson != null && when != null && when.isBefore(lesson.fact().from())) {
            in.wrong(WHEN, ProblemKind.EARLIER_THAN, WHEN, when, lesson.fact().from());
        }
        if (build == null || lesson == null || when == null || !in.fine()) {
            return;
        }
        Id<Concession> concession = accepted.isEmpty() ? null : concede(in, build, lesson.fact(), when, accepted, by);
        in.make(LESSON, new LessonAnswer(lesson.id(), build.id(), when, isMet, concession, words, by));
    }

    private static Object asked(Lesson lesson) {
        return lesson.kind() == null ? lesson.question() : lesson.kind();
    }

    /** It accepts the lesson alone: a kind of figure would accept what is outside the sheet's own limits too. */
    private static @Nullable Id<Concession> concede(
            ReadSheet in, Entry<Build> build, Lesson lesson, Moment when, String why, String by) {
        return in.make(
                ACCEPTED,
                new Concession(
                        build.fact().engine(), null, build.id(), null, when, lesson.what(), why, by, null, null));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        Optional<Entry<Build>> build = sight.find(Build.class, typed.text(BUILD));
        return List.of(
                build.map(entry -> sight.name(Engine.class, entry.fact().engine()))
                        .orElse(""),
                build.map(entry -> String.valueOf(entry.fact().number())).orElse(""),
                Lessons.name(sight, typed.text(LESSON)));
    }
}
