package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.domain.StockBatch;

/**
 * Something kept on the shelf for a job that is open: a part, or items of a batch not taken yet.
 *
 * @param job for which job
 * @param part the part, or null
 * @param batch the batch, or null
 * @param count how many are still to be taken, 1 or more; 1 for a part
 */
public record KeptForJob(
        Id<Job> job, @Nullable Entry<Part> part, @Nullable Entry<StockBatch> batch, int count) {}
