package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.quantity.Moment;

/**
 * One line of an account: an entry and what it adds. An entry that is not counted adds nothing.
 *
 * @param source the run, told running or prior life
 * @param at when it happened; a run, when it went out
 * @param amount the likely figure it adds, in the counter's unit
 * @param lowest the least it adds
 * @param highest the most it adds
 * @param how how the figure is known; null for a prior life carried in as known, and for what is not counted
 * @param fitment the part's fitment it was charged through, or null for a prior life and for an engine's or car's own
 * @param counted whether it is in the sum, and if not, why
 */
public record Charge(
        Entry<?> source,
        Moment at,
        long amount,
        long lowest,
        long highest,
        @Nullable HowKnown how,
        @Nullable Entry<Fitment> fitment,
        Counted counted) {
    public Charge {
        if (counted != Counted.YES && highest != 0) {
            throw new IllegalArgumentException("what is not counted adds nothing");
        }
    }
}
