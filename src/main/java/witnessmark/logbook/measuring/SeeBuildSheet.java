package witnessmark.logbook.measuring;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Lesson;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.SignOff;
import witnessmark.domain.SignedCheck;
import witnessmark.fit.Checks;
import witnessmark.fit.Contradictions;
import witnessmark.fit.Goal;
import witnessmark.fit.Sheet;
import witnessmark.fit.Ways;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.LessonCheck;
import witnessmark.fit.result.Proposal;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/** Sees build sheets as of the day looked at. Reads and computes only. */
public final class SeeBuildSheet {
    private static final Map<MeasureKind, Goal.Kind> GOALS = Map.of(
            MeasureKind.CROWN_TO_HEAD,
            Goal.Kind.CROWN_TO_HEAD,
            MeasureKind.DECK_MEAN,
            Goal.Kind.DECK_CLEARANCE,
            MeasureKind.COMPRESSION_RATIO,
            Goal.Kind.COMPRESSION_RATIO);

    private SeeBuildSheet() {}

    /** Every build up to the day, the open ones first, each the latest first. */
    public static List<Entry<Build>> all(View view) {
        return view.facts()
                .of(Build.class)
                .inForce()
                .filter(build -> view.ledger().asOf().counts(build.fact().opened()))
                .sorted(Comparator.comparing((Entry<Build> build) -> !isOpen(view, build.fact()))
                        .thenComparing(build -> build.fact().opened(), Comparator.reverseOrder()))
                .toList();
    }

    /** What is known of an engine by the sheet of a build. */
    public static Sheet sheet(View view, Entry<Build> build) {
        return new BuildSheets(view).sheet(build);
    }

    /** Whether a build is open on the day looked at. */
    public static boolean isOpen(View view, Build build) {
        return build.closed() == null || !view.ledger().asOf().counts(build.closed());
    }

    /** The build of an engine with that number; without a number the last one that anything was measured in, or the last. */
    public static Optional<Entry<Build>> build(View view, Id<Engine> engine, @Nullable Integer number) {
        List<Entry<Build>> builds = view.facts()
                .of(Build.class)
                .inForce()
                .filter(build -> build.fact().engine().equals(engine)
                        && view.ledger().asOf().counts(build.fact().opened()))
                .sorted(Comparator.comparing(build -> build.fact().opened(), Comparator.reverseOrder()))
                .toList();
        BuildSheets sheets = new BuildSheets(view);
        return number != null
                ? builds.stream()
                        .filter(build -> build.fact().number() == number)
                        .findFirst()
                : builds.stream()
                        .filter(build -> !sheets.measured(build.id()).isEmpty())
                        .findFirst()
                        .or(() -> builds.stream().findFirst());
    }

    /** A build's sheet; empty where the day has no such build. */
    public static Optional<SheetPage> of(View view, Id<Build> id) {
        return view.facts()
                .of(Build.class)
                .find(id)
                .filter(build -> build.inForce()
                        && view.ledger().asOf().counts(build.fact().opened()))
                .map(build -> page(view, build));
    }

    private static SheetPage page(View view, Entry<Build> build) {
        Facts facts = view.facts();
        BuildSheets sheets = new BuildSheets(view);
        Sheet sheet = sheets.sheet(build);
        Entry<SignOff> signed = signed(view, build.id());
        List<MeasurePlace> order = new MeasuringOrder(view, build, sheet).places();
        List<Answer> answers = Checks.of(sheet);
        List<Entry<Concession>> accepted = accepted(view, build.id());
        return new SheetPage(
                build,
                facts.of(Engine.class).find(build.fact().engine()).orElseThrow(),
                sheets.design(build.fact()),
                order,
                order.stream()
                        .collect(Collectors.toMap(
                                Function.identity(), place -> sheet.bounds(place.kind(), place.spot()))),
                designed(sheet, order),
                sheets.measured(build.id()),
                answers,
                Contradictions.of(sheet),
                accepted,
                signed,
                signed == null
                        ? List.of()
                        : facts.of(SignedCheck.class)
                                .inForce()
                                .filter(entry -> entry.fact().signOff().equals(signed.id()))
                                .toList(),
                new StrongerLinks(view).of(build).orElse(null),
                sheets.pulls(build, sheet),
                sheets.lacking(build.fact()),
                new LessonsOfSheet(view)
                        .of(build, signed == null ? null : signed.fact().at(), answers, accepted));
    }

    /** What lessons ask of a sheet that is signed at a moment, whoever signed it before. */
    public static List<LessonCheck> askedOf(View view, SheetPage page, Moment signing) {
        return new LessonsOfSheet(view).of(page.build(), signing, page.answers(), page.accepted());
    }

    /** What lessons ask of the sheet of a build, without the rest of it. */
    public static List<LessonCheck> lessons(View view, Entry<Build> build) {
        return lessons(view, build, view.facts().of(Lesson.class).where(lesson -> true));
    }

    /** What some lessons ask of the sheet of a build, which is worked out only where they ask something. */
    public static List<LessonCheck> lessons(View view, Entry<Build> build, List<Entry<Lesson>> lessons) {
        LessonsOfSheet sheet = new LessonsOfSheet(view);
        Entry<SignOff> signed = signed(view, build.id());
        List<Entry<Lesson>> asked =
                sheet.asked(build, signed == null ? null : signed.fact().at(), lessons);
        return asked.isEmpty()
                ? List.of()
                : sheet.held(asked, build, Checks.of(new BuildSheets(view).sheet(build)), accepted(view, build.id()));
    }

    /** The last signing up to the day looked at, or null. */
    private static @Nullable Entry<SignOff> signed(View view, Id<Build> build) {
        return view.facts()
                .of(SignOff.class)
                .inForce()
                .filter(entry -> entry.fact().build().equals(build)
                        && view.ledger().asOf().counts(entry.fact().at()))
                .max(Comparator.comparing(entry -> entry.fact().at()))
                .orElse(null);
    }

    private static List<Entry<Concession>> accepted(View view, Id<Build> build) {
        return view.facts()
                .of(Concession.class)
                .inForce()
                .filter(entry -> build.equals(entry.fact().build())
                        && view.ledger().asOf().counts(entry.fact().at()))
                .toList();
    }

    private static Map<MeasurePlace, Long> designed(Sheet sheet, List<MeasurePlace> places) {
        Map<MeasurePlace, Long> designed = new HashMap<>();
        for (MeasurePlace place : places) {
            Given given = sheet.designed(place);
            if (given != null) {
                designed.put(place, given.value());
            }
        }
        return designed;
    }

    /**
     * A sheet as it would stand with figures that are not written.
     *
     * @param changes what would be written, as {@link WriteFigures} makes it
     */
    public static SheetPage with(View view, SheetPage page, List<Entry<Measurement>> changes) {
        BuildSheets sheets = new BuildSheets(view, changes);
        Sheet sheet = sheets.sheet(page.build());
        List<Answer> answers = Checks.of(sheet);
        return page.with(
                sheets.measured(page.build().id()),
                answers,
                Contradictions.of(sheet),
                sheets.pulls(page.build(), sheet),
                LessonsOfSheet.again(page.lessons(), answers, page.accepted()));
    }

    /** Kinds of figures that ways can be looked for to. */
    public static boolean hasWays(MeasureKind kind) {
        return GOALS.containsKey(kind);
    }

    /**
     * The ways to a figure that is wanted.
     *
     * @param kind one that {@linkplain #hasWays has ways}
     * @param value whole parts of its dimension
     */
    public static List<Proposal> ways(View view, Id<Build> id, MeasureKind kind, long value) {
        return ways(view, id, new Goal(Objects.requireNonNull(GOALS.get(kind)), value));
    }

    /** The ways to what is wanted of a build, with the gaskets that lie on the shelf. */
    public static List<Proposal> ways(View view, Id<Build> id, Goal goal) {
        BuildSheets sheets = new BuildSheets(view);
        Entry<Build> build = view.facts().of(Build.class).find(id).orElseThrow();
        return Ways.to(goal, sheets.sheet(build), sheets.gasketsOnShelf(view.day()));
    }
}
