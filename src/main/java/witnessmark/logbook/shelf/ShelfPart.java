package witnessmark.logbook.shelf;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Job;
import witnessmark.ledger.result.LimitUse;
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
 * @param counted its limits on something else than running time, for each counter the one that stands worst
 * @param since what it ran since the work that starts a count of its own, or null for a part of which none does
 * @param whole whether it is a set of which members are still together
 * @param keptFor the open jobs it is kept for
 * @param onTrial whether a trial that has begun names its design
 */
public record ShelfPart(
        PartRow row,
        Where where,
        @Nullable FittedTime there,
        @Nullable String car,
        @Nullable FittedTime before,
        @Nullable MarkOn worst,
        List<LimitUse> counted,
        @Nullable SinceWork since,
        boolean whole,
        List<Entry<Job>> keptFor,
        boolean onTrial) {
    public ShelfPart {
        counted = List.copyOf(counted);
        keptFor = List.copyOf(keptFor);
    }

    /** Whether it is out of use or split up: nothing more is asked of it. */
    public boolean gone() {
        return where.state() == Where.State.SCRAPPED || where.state() == Where.State.SPLIT;
    }

    /** The mark people know it by. */
    public String mark() {
        return row.part().fact().mark();
    }
}
