package witnessmark.logbook.standing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.ledger.result.Life;

/**
 * What an engine's last outing added to it. An outing is the runs of one event, or those of one day that belong to none.
 *
 * @param engine which engine
 * @param number its number
 * @param event the event's name, or null when it was at none
 * @param runs the runs of the outing, the first first
 * @param parts parts and sets in the engine when it last went out
 * @param now its running time as of the day looked at
 * @param added what the outing added to it
 */
public record LifeMoved(
        Id<Engine> engine,
        String number,
        @Nullable String event,
        List<Entry<Run>> runs,
        int parts,
        Life now,
        Life added) {
    public LifeMoved {
        runs = List.copyOf(runs);
    }

    /** What it had run before the outing, in milliseconds: the likely figure. */
    public long before() {
        return now.total() - added.total();
    }

    /** The least it had run before the outing, in milliseconds. */
    public long leastBefore() {
        return Math.max(0, now.lowest() - added.highest());
    }

    /** Whether any of what it had run before the outing is told or estimated, so that the figure is only likely. */
    public boolean aboutBefore() {
        return now.toldHighest() != added.toldHighest() || now.estimated() != added.estimated();
    }
}
