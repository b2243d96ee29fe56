package witnessmark.logbook.measuring;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.PartKind;
import witnessmark.domain.SignOff;
import witnessmark.domain.SignedCheck;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Contradiction;
import witnessmark.fit.result.LessonCheck;
import witnessmark.fit.result.Pull;
import witnessmark.fit.result.SheetCounts;
import witnessmark.fit.result.StrongerLink;

/**
 * A build sheet with all that is worked out of it.
 *
 * @param build which build
 * @param engine of which engine
 * @param design of which design
 * @param order every place the sheet asks for, in measuring order
 * @param bounds what a figure may be at each of them
 * @param designed the figure a design gives there, where one does
 * @param figures every measurement, repeats too, in the order they were taken
 * @param answers the checks, in the order a builder asks
 * @param contradictions figures that cannot all be right
 * @param accepted what is accepted as it is in this build
 * @param signed the last signing, or null while it is not signed
 * @param signedChecks what stood when it was signed, in the order it was kept
 * @param strongerLink a head gasket stronger than the one before, or null
 * @param pulls what the fasteners of each joint pull with
 * @param lacking kinds of parts without which an engine is none and of which none is in it, so that what is set for their
 *     designs is not asked for
 * @param lessons what lessons ask of it, in the order they were learned
 */
public record SheetPage(
        Entry<Build> build,
        Entry<Engine> engine,
        EngineDesign design,
        List<MeasurePlace> order,
        Map<MeasurePlace, Bounds> bounds,
        Map<MeasurePlace, Long> designed,
        List<Entry<Measurement>> figures,
        List<Answer> answers,
        List<Contradiction> contradictions,
        List<Entry<Concession>> accepted,
        @Nullable Entry<SignOff> signed,
        List<Entry<SignedCheck>> signedChecks,
        @Nullable StrongerLink strongerLink,
        List<Pull> pulls,
        List<PartKind> lacking,
        List<LessonCheck> lessons) {
    public SheetPage {
        order = List.copyOf(order);
        bounds = Map.copyOf(bounds);
        designed = Map.copyOf(designed);
        figures = List.copyOf(figures);
        answers = List.copyOf(answers);
        contradictions = List.copyOf(contradictions);
        accepted = List.copyOf(accepted);
        signedChecks = List.copyOf(signedChecks);
        pulls = List.copyOf(pulls);
        lacking = List.copyOf(lacking);
        lessons = List.copyOf(lessons);
    }

    /** What a figure may be at a place of the sheet. */
    public Bounds bounds(MeasurePlace place) {
        return bounds.getOrDefault(place, Bounds.NONE);
    }

    /**
     * The same sheet with other figures, of which nothing is written.
     *
     * @param figures every measurement as it would stand
     * @param answers the checks of those
     * @param asked how they answer the lessons
     */
    SheetPage with(
            List<Entry<Measurement>> figures,
            List<Answer> answers,
            List<Contradiction> found,
            List<Pull> pulls,
            List<LessonCheck> asked) {
        return new SheetPage(
                build,
                engine,
                design,
                order,
                bounds,
                designed,
                figures,
                answers,
                found,
                accepted,
                signed,
                signedChecks,
                strongerLink,
                pulls,
                lacking,
                asked);
    }

    /** How many of its places have a figure. */
    public int measured() {
        return (int) order.stream().filter(place -> figure(place).isPresent()).count();
    }

    /** The figure that counts at a place. */
    public Optional<Measurement> figure(MeasurePlace place) {
        return figures.stream()
                .map(Entry::fact)
                .filter(figure -> figure.inUse() && figure.place().equals(place))
                .findFirst();
    }

    public Optional<Answer> answer(MeasureKind kind) {
        return answers.stream().filter(answer -> answer.kind() == kind).findFirst();
    }

    /** What accepts a check that is outside or was not measured. */
    public Optional<Entry<Concession>> accepts(Check check) {
        return accepted.stream()
                .filter(concession -> concession.fact().kind() == check.place().kind()
                        && (concession.fact().number() == null
                                || concession
                                        .fact()
                                        .number()
                                        .equals(check.place().number())))
                .findFirst();
    }

    /** What nobody accepted and a limit asks about, what is outside first: outside it, or not measured. */
    public List<Check> leftOpen() {
        return open(false);
    }

    private List<Check> open(boolean accepted) {
        return answers.stream()
                .flatMap(answer -> answer.open().stream())
                .filter(check -> accepts(check).isPresent() == accepted)
                .sorted(Comparator.comparing(check -> check.verdict() != FitVerdict.OUTSIDE))
                .toList();
    }

    /** What it comes to. */
    public SheetCounts counts() {
        List<Check> left = open(false);
        List<Check> taken = open(true);
        int outside = outside(left);
        int accepted = outside(taken);
        return new SheetCounts(
                outside,
                left.size() - outside,
                accepted,
                taken.size() - accepted,
                openLessons().size());
    }

    /** Lessons that keep it from being signed. */
    public List<LessonCheck> openLessons() {
        return lessons.stream().filter(LessonCheck::open).toList();
    }

    private static int outside(List<Check> checks) {
        return (int) checks.stream()
                .filter(check -> check.verdict() == FitVerdict.OUTSIDE)
                .count();
    }
}
