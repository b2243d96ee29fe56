package witnessmark.logbook.engines;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Moment;

/**
 * One part or set, wherever it is.
 *
 * @param part which one
 * @param design what it is
 * @param last where it is; when it lies on the shelf, where it was last; null when it was never fitted
 * @param first when its first entry happened, when that is after the day looked at: then nothing is known yet; or null
 * @param running its whole running time
 */
public record PartRow(
        Entry<Part> part,
        PartDesign design,
        @Nullable FittedTime last,
        @Nullable Moment first,
        Life running) {
    /** Whether it is in an engine on the day looked at. */
    public boolean inEngine() {
        return last != null && last.lasts() && last.engine() != null;
    }
}
