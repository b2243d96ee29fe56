package witnessmark.logbook.shelf;

import org.jspecify.annotations.Nullable;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Moment;

/**
 * What a part ran since the work that starts a count of its own: a head since it was skimmed, any other part in an engine
 * since that was last rebuilt.
 *
 * @param work which work that is
 * @param at when it was done, or null when none is written down
 * @param ran running time since then; the whole life when none is written down
 */
public record SinceWork(Work work, @Nullable Moment at, Life ran) {
    /** Work that starts a count. */
    public enum Work {
        SKIM,
        REBUILD
    }
}
