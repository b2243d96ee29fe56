package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.KeptForJob;
import witnessmark.ledger.result.StockLevel;

/** How much of every batch is on the shelf as of a day, what is kept of it for open jobs, and where it runs short. */
public final class Stock {
    private final Facts facts;
    private final AsOf asOf;
    private final List<KeptForJob> forJobs;
    private final Map<Id<StockBatch>, Integer> onShelf = new HashMap<>();
    private final Map<Id<StockBatch>, Integer> kept = new HashMap<>();
    private final Map<Id<PartDesign>, Integer> onOrder = new HashMap<>();

    /** @param facts everything written */
    public Stock(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.asOf = asOf;
        facts.of(StockMove.class)
                .inForce()
                .map(Entry::fact)
                .filter(move -> asOf.counts(move.at()))
                .forEach(move -> onShelf.merge(move.stock(), move.change(), Integer::sum));
        this.forJobs = new KeptForJobs(facts, asOf).all();
        for (KeptForJob each : forJobs) {
            if (each.batch() != null) {
                kept.merge(each.batch().id(), each.count(), Integer::sum);
            }
        }
        for (Away away : new OutWithOthers(facts, asOf).all()) {
            Id<PartDesign> design = away.sent().fact().design();
            Integer count = away.sent().fact().count();
            if (design != null && count != null) {
                onOrder.merge(design, count, Integer::sum);
            }
        }
    }

    /** Every batch, in the order they were written. */
    public List<StockLevel> all() {
        List<Entry<StockBatch>> batches = facts.of(StockBatch.class).inForce().toList();
        Map<Id<PartDesign>, Integer> free = new HashMap<>();
        Map<Id<PartDesign>, Integer> least = new HashMap<>();
        for (Entry<StockBatch> batch : batches) {
            Id<PartDesign> design = batch.fact().design();
            free.merge(design, free(batch), Integer::sum);
            least.merge(design, batch.fact().leastToKeep(), Math::max);
        }
        return batches.stream()
                .map(batch -> {
                    Id<PartDesign> design = batch.fact().design();
                    return new StockLevel(
                            batch,
                            onShelf.getOrDefault(batch.id(), 0),
                            kept.getOrDefault(batch.id(), 0),
                            pastUse(batch.fact()),
                            free.getOrDefault(design, 0),
                            least.getOrDefault(design, 0),
                            onOrder.getOrDefault(design, 0));
                })
                .toList();
    }

    /** The parts kept for jobs that are open, with these jobs. */
    public Map<Id<Part>, List<Entry<Job>>> keptParts() {
        Map<Id<Part>, List<Entry<Job>>> parts = new HashMap<>();
        for (KeptForJob each : forJobs) {
            if (each.part() != null) {
                parts.computeIfAbsent(each.part().id(), id -> new ArrayList<>())
                        .add(facts.of(Job.class).find(each.job()).orElseThrow());
            }
        }
        return parts;
    }

    private int free(Entry<StockBatch> batch) {
        int there = pastUse(batch.fact()) ? 0 : onShelf.getOrDefault(batch.id(), 0);
        return there - kept.getOrDefault(batch.id(), 0);
    }

    private boolean pastUse(StockBatch batch) {
        return batch.useBy() != null && asOf.day().isAfter(batch.useBy());
    }
}
