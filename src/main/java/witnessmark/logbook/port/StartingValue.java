package witnessmark.logbook.port;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.LimitAction;
import witnessmark.domain.PartKind;
import witnessmark.quantity.Counter;

/**
 * What the trade starts from where a builder, a maker or a rule book says nothing: a range, or words where there is no
 * figure. It is shown, and never written down as a limit.
 *
 * @param of the class of engine it is for
 * @param part the kind of part
 * @param action what falls due
 * @param counter counted in what
 * @param low the lowest of the range as a limit counts it, age in months; null where there are only words
 * @param high the highest; null together with the lowest, and never below it
 * @param note variants, or when it is done; empty only beside a figure
 * @param source where it is from, never empty
 */
public record StartingValue(
        EngineClass of,
        PartKind part,
        LimitAction action,
        Counter counter,
        @Nullable Long low,
        @Nullable Long high,
        String note,
        String source) {
    public StartingValue {
        if ((low == null) != (high == null) || (low != null && high != null && (low <= 0 || low > high))) {
            throw new IllegalArgumentException("from " + low + " to " + high + " is no range");
        }
        if (low == null && note.isEmpty()) {
            throw new IllegalArgumentException("neither figure nor words");
        }
        if (source.isEmpty()) {
            throw new IllegalArgumentException("no source");
        }
    }
}
