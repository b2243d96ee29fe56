package witnessmark.logbook.engines;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.standing.MarkOn;

/**
 * One part or set in full as of a day.
 *
 * @param row what the list says of it
 * @param where where it is, and why
 * @param worst how it stands where it is, and why; null when nothing is held against it
 * @param members the members of a set that were not split off; empty for a part
 * @param times every time it was fitted, the latest first
 * @param lives one for each counter that runs feed, in the order of the counters
 */
public record PartSheet(
        PartRow row, Where where, @Nullable MarkOn worst, List<String> members, List<Time> times, List<Life> lives) {
    /**
     * A time it was fitted and what it ran in that time.
     *
     * @param ran its running time there
     */
    public record Time(FittedTime fitted, Life ran) {}

    public PartSheet {
        members = List.copyOf(members);
        times = List.copyOf(times);
        lives = List.copyOf(lives);
    }
}
