package witnessmark.ledger.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;

/**
 * What lies on the shelf and fits a position: a part, or one of a batch.
 *
 * @param part which part or set, or null for one of a batch
 * @param batch of which batch, or null for a part
 * @param design what it is
 * @param alike it is what the parts list names there, or where none does what was there last
 * @param kept an open job wants it
 * @param running what it has run; null for one of a batch, which has run nothing
 * @param marked what was found on it that has gone far, the worst first; empty for one of a batch
 * @param worst how it stands against the limits of the engine it would go into, or null when nothing holds it
 */
public record FreePart(
        @Nullable Entry<Part> part,
        @Nullable StockLevel batch,
        Entry<PartDesign> design,
        boolean alike,
        boolean kept,
        @Nullable Life running,
        List<Entry<Finding>> marked,
        @Nullable Mark worst) {
    public FreePart {
        marked = List.copyOf(marked);
        if ((part == null) == (batch == null)) {
            throw new IllegalArgumentException("a part is free, or one of a batch");
        }
    }

    /** Whether it is held, or at its limit or past it. */
    public boolean held() {
        Mark mark = worst;
        return mark != null && (mark.state() == MarkState.HELD || mark.state() == MarkState.OVER);
    }
}
