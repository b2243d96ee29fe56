package witnessmark.fit.result;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;

/**
 * All checks of one kind of figure, the answer first.
 *
 * @param kind of what
 * @param verdict the worst of them
 * @param nearest the check that lies worst, or nearest to its limit; null when nothing was measured
 * @param checks one for each place, in measuring order
 * @param pattern what the figures show taken together, or null
 */
public record Answer(
        MeasureKind kind,
        FitVerdict verdict,
        @Nullable Check nearest,
        List<Check> checks,
        @Nullable Pattern pattern) {
    /** Verdicts as a builder asks for them: what is wrong first, what is missing next. */
    private static final List<FitVerdict> SEVERITY = List.of(
            FitVerdict.OUTSIDE, FitVerdict.NOT_MEASURED, FitVerdict.OFF_AIM, FitVerdict.NO_LIMIT, FitVerdict.INSIDE);

    /** The worst first; those alike stay as they are. */
    public static final Comparator<Answer> WORST_FIRST =
            Comparator.comparingInt(answer -> SEVERITY.indexOf(answer.verdict()));

    public Answer {
        checks = List.copyOf(checks);
    }

    /** Whether anybody measured for it or set a limit: what nobody asks for is not called missing. */
    public boolean asked() {
        return checks.stream()
                .anyMatch(check -> check.value() != null || check.bounds().set());
    }

    /**
     * What stays open until it is put right, measured or accepted: what is outside, and what lacks a figure that a limit
     * asks for. What the trade holds to asks for none as long as nothing of the kind was measured.
     */
    public List<Check> open() {
        return asked() ? checks.stream().filter(Check::leavesOpen).toList() : List.of();
    }

    /** The worst of several verdicts; not measured where there is none. */
    public static FitVerdict worst(List<Check> checks) {
        return checks.stream()
                .map(Check::verdict)
                .min(Comparator.comparingInt(SEVERITY::indexOf))
                .orElse(FitVerdict.NOT_MEASURED);
    }
}
