package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * Something kept on the shelf for a job: one part, or items of a batch.
 *
 * @param job for which job
 * @param part the part, or null
 * @param stock the batch, or null
 * @param count how many; 1 for a part
 */
public record JobPart(
        Id<Job> job, @Nullable Id<Part> part, @Nullable Id<StockBatch> stock, int count) implements Fact {
    public JobPart {
        if ((part == null) == (stock == null)) {
            throw new IllegalArgumentException("a part is kept, or items of a batch");
        }
        if (count < 1 || part != null && count != 1) {
            throw new IllegalArgumentException("at least one is kept");
        }
    }
}
