package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * Items put on the shelf or taken from it.
 *
 * @param stock of which batch
 * @param at when
 * @param change how many came, or went with a minus
 * @param kind why
 * @param part the part it was fitted as, or null
 * @param job for which job, or null
 * @param by who
 * @param note anything else
 */
public record StockMove(
        Id<StockBatch> stock,
        Moment at,
        int change,
        StockMoveKind kind,
        @Nullable Id<Part> part,
        @Nullable Id<Job> job,
        String by,
        String note)
        implements Fact {
    public StockMove {
        if (change == 0) {
            throw new IllegalArgumentException("something came or went");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
