package witnessmark.fit.result;

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
    public Answer {
        checks = List.copyOf(checks);
    }
}
