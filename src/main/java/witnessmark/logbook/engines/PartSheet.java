package witnessmark.logbook.engines;

import java.util.List;
import witnessmark.ledger.result.Life;

/**
 * One part or set in full as of a day.
 *
 * @param row what the list says of it
 * @param members the members of a set that were not split off; empty for a part
 * @param times every time it was fitted, the latest first
 * @param lives one for each counter that runs feed, in the order of the counters
 */
public record PartSheet(PartRow row, List<String> members, List<Time> times, List<Life> lives) {
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
