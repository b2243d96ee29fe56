package witnessmark.logbook.engines;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.HowKnown;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Moment;

/**
 * A figure with every entry behind it. The lines that count add up to the life exactly.
 *
 * @param figure which figure
 * @param first when the first entry happened, when that is after the day looked at: then nothing is known yet; or null
 * @param life the sum
 * @param lines in the order of time, a life carried in first
 */
public record Behind(Figure figure, @Nullable Moment first, Life life, List<Line> lines) {
    public Behind {
        lines = List.copyOf(lines);
    }

    /** Whether a line is in the sum, and if not, why. */
    public enum Why {
        COUNTED,
        /** It does not say this counter. */
        NOT_READ,
        /** Perhaps the same run as another, until somebody decides. */
        PERHAPS_SAME,
        /** It ran before the moment the life carried in is stated at. */
        BEFORE_PRIOR_LIFE,
        /** Somebody took it out, with a reason. */
        STRUCK_OUT,
        /** Two laptops wrote against each other. */
        IN_CONFLICT
    }

    /**
     * One entry.
     *
     * @param source the run, told running or life carried in
     * @param at when it happened
     * @param amount the likely figure it adds; 0 when it is not counted
     * @param lowest the least it adds
     * @param highest the most it adds
     * @param says what the entry itself says by this counter, or null when it does not say; for lines not counted
     * @param how how the figure is known, or null when it is not counted or was carried in as known
     * @param why whether it counts
     * @param event the name of a run's event, or null
     * @param position the position a part was in, or null for an engine's own figure
     * @param place the engine's number or car's name it was in then, or null
     * @param same the run it is perhaps the same as, or null
     */
    public record Line(
            Entry<?> source,
            Moment at,
            long amount,
            long lowest,
            long highest,
            @Nullable Long says,
            @Nullable HowKnown how,
            Why why,
            @Nullable String event,
            @Nullable String position,
            @Nullable String place,
            @Nullable Entry<?> same) {
        public boolean counts() {
            return why == Why.COUNTED;
        }
    }

    /** The lines that are not in the sum. */
    public List<Line> notCounted() {
        return lines.stream().filter(line -> !line.counts()).toList();
    }
}
