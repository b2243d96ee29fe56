package witnessmark.logbook.measuring;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import witnessmark.domain.SignOff;
import witnessmark.domain.SignedCheck;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Contradiction;
import witnessmark.fit.result.Pull;
import witnessmark.fit.result.StrongerLink;

/**
 * A build sheet with all that is worked out of it.
 *
 * @param build which build
 * @param engine of which engine
 * @param design of which design
 * @param order every place the sheet asks for, in measuring order
 * @param bounds what a figure may be at each of them
 * @param figures every measurement, repeats too, in the order they were taken
 * @param answers the checks, in the order a builder asks
 * @param contradictions figures that cannot all be right
 * @param accepted what is accepted as it is in this build
 * @param signed the last signing, or null while it is not signed
 * @param signedChecks what stood when it was signed, in the order it was kept
 * @param strongerLink a head gasket stronger than the one before, or null
 * @param pulls what the fasteners of each joint pull with
 */
public record SheetPage(
        Entry<Build> build,
        Entry<Engine> engine,
        EngineDesign design,
        List<MeasurePlace> order,
        Map<MeasurePlace, Bounds> bounds,
        List<Entry<Measurement>> figures,
        List<Answer> answers,
        List<Contradiction> contradictions,
        List<Entry<Concession>> accepted,
        @Nullable Entry<SignOff> signed,
        List<Entry<SignedCheck>> signedChecks,
        @Nullable StrongerLink strongerLink,
        List<Pull> pulls) {
    public SheetPage {
        order = List.copyOf(order);
        bounds = Map.copyOf(bounds);
        figures = List.copyOf(figures);
        answers = List.copyOf(answers);
        contradictions = List.copyOf(contradictions);
        accepted = List.copyOf(accepted);
        signedChecks = List.copyOf(signedChecks);
        pulls = List.copyOf(pulls);
    }

    /** What a figure may be at a place of the sheet. */
    public Bounds bounds(MeasurePlace place) {
        return bounds.getOrDefault(place, Bounds.NONE);
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

    /** What nobody accepted and a limit asks about: outside it, or not measured. */
    public List<Check> leftOpen() {
        return Stream.concat(
                        open(FitVerdict.OUTSIDE).stream(),
                        open(FitVerdict.NOT_MEASURED).stream()
                                .filter(check -> check.bounds().limits()))
                .toList();
    }

    /** How many of those left open are of that verdict. */
    public int leftOpen(FitVerdict verdict) {
        return (int)
                leftOpen().stream().filter(check -> check.verdict() == verdict).count();
    }

    /** How many figures that would be left open somebody accepted as they are. */
    public int acceptedFigures() {
        return (int) answers.stream()
                .flatMap(answer -> answer.checks().stream())
                .filter(check -> check.verdict() == FitVerdict.OUTSIDE
                        || check.verdict() == FitVerdict.NOT_MEASURED
                                && check.bounds().limits())
                .filter(check -> accepts(check).isPresent())
                .count();
    }

    /** Checks that are outside their limits, or lack a figure a limit asks for, and that nobody accepted. */
    public List<Check> open(FitVerdict verdict) {
        return answers.stream()
                .flatMap(answer -> answer.checks().stream())
                .filter(check -> check.verdict() == verdict && accepts(check).isEmpty())
                .toList();
    }
}
