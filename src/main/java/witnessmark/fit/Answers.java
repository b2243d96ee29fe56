package witnessmark.fit;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Pattern;

/** Puts the worst of several checks first. */
final class Answers {
    /** Worst first. */
    private static final List<FitVerdict> SEVERITY = List.of(
            FitVerdict.OUTSIDE, FitVerdict.NOT_MEASURED, FitVerdict.OFF_AIM, FitVerdict.NO_LIMIT, FitVerdict.INSIDE);

    private static final Comparator<Check> NEAREST = Comparator.comparing(
            (Check check) -> check.bounds().room(java.util.Objects.requireNonNull(check.value())),
            Comparator.nullsLast(Comparator.naturalOrder()));

    private Answers() {}

    static Answer of(MeasureKind kind, List<Check> checks, @Nullable Pattern pattern) {
        FitVerdict worst = checks.stream()
                .map(Check::verdict)
                .min(Comparator.comparingInt(SEVERITY::indexOf))
                .orElse(FitVerdict.NOT_MEASURED);
        Check nearest = checks.stream()
                .filter(check -> check.value() != null)
                .min(NEAREST)
                .orElse(null);
        return new Answer(kind, worst, nearest, checks, pattern);
    }
}
