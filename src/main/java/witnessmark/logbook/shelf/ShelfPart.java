package witnessmark.logbook.shelf;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Job;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.engines.FittedTime;
import witnessmark.logbook.engines.PartRow;
import witnessmark.logbook.standing.MarkOn;

/**
 * One part or set, where it is and what is left in it.
 *
 * @param row what it is and what it ran
 * @param where where it is
 * @param there the engine or car it is fitted in, or null when it is not fitted
 * @param car the car that the engine it is fitted in is in, or null
 * @param before the last time it was fitted that is over, or null when it never was: for a borrowed part where it goes
 *     back to
 * @param worst how it stands worst, or null when nothing is held against it, and for what is out of use
 * @param keptFor the open jobs it is kept for
 */
public record ShelfPart(
        PartRow row,
        Where where,
        @Nullable FittedTime there,
        @Nullable String car,
        @Nullable FittedTime before,
        @Nullable MarkOn worst,
        List<Entry<Job>> keptFor) {
    public ShelfPart {
        keptFor = List.copyOf(keptFor);
    }

    /** The mark people know it by. */
    public String mark() {
        return row.part().fact().mark();
    }
}
