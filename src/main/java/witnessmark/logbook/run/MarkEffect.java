package witnessmark.logbook.run;

import org.jspecify.annotations.Nullable;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkChange;
import witnessmark.logbook.standing.MarkOn;

/**
 * What the run does to one mark, with the names people know its subject by.
 *
 * @param change how it stands without the run and with it
 * @param after how it stands with it, named
 */
public record MarkEffect(MarkChange change, MarkOn after) {
    /** The limit as it is used without the run; null when it is another mark. */
    public @Nullable LimitUse before() {
        return change.before() != null && change.before().reason() instanceof LimitUse use ? use : null;
    }
}
