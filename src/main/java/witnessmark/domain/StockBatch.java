package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Items without a serial that were made or bought together: gaskets, bolts, oil, fuel.
 *
 * @param design what they are
 * @param batch maker's batch, or a word of the team's own to tell it by
 * @param supplier whom they came from
 * @param useBy printed date that no plan may pass, or null
 * @param shelf where they lie
 * @param leastToKeep how many the team wants on the shelf of this design; 0 when it said none
 * @param note anything else
 */
public record StockBatch(
        Id<PartDesign> design,
        String batch,
        String supplier,
        @Nullable LocalDate useBy,
        String shelf,
        int leastToKeep,
        String note)
        implements Fact {
    public StockBatch {
        if (batch.isBlank()) {
            throw new IllegalArgumentException("a batch has a word to tell it by");
        }
        if (leastToKeep < 0) {
            throw new IllegalArgumentException("the least to keep is 0 or more");
        }
    }

    @Override
    public String knownAs() {
        return batch;
    }

    @Override
    public Id<?> knownWithin() {
        return design;
    }
}
