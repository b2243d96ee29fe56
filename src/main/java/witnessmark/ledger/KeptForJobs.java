package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.JobPart;
import witnessmark.domain.Part;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.ledger.result.KeptForJob;

/** What is kept on the shelf for open jobs as of a day: each part, and of each batch what a job has not taken yet. */
public final class KeptForJobs {
    private final Facts facts;
    private final AsOf asOf;

    /** @param facts everything written */
    public KeptForJobs(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.asOf = asOf;
    }

    /** What a job takes of a batch. */
    private record Taken(Id<StockBatch> stock, Id<Job> job) {}

    /** Everything kept: parts first, each in the order it was written. */
    public List<KeptForJob> all() {
        List<KeptForJob> kept = new ArrayList<>();
        Map<Taken, Integer> wanted = new LinkedHashMap<>();
        facts.of(JobPart.class).inForce().map(Entry::fact).forEach(keeps -> {
            if (!isOpen(keeps.job())) {
                return;
            }
            Id<Part> part = keeps.part();
            if (part != null) {
                kept.add(new KeptForJob(
                        keeps.job(), facts.of(Part.class).find(part).orElseThrow(), null, keeps.count()));
            } else if (keeps.stock() != null) {
                wanted.merge(new Taken(keeps.stock(), keeps.job()), keeps.count(), Integer::sum);
            }
        });
        Map<Taken, Integer> taken = taken();
        wanted.forEach((what, count) -> {
            int left = count - Math.max(0, taken.getOrDefault(what, 0));
            if (left > 0) {
                Entry<StockBatch> batch =
                        facts.of(StockBatch.class).find(what.stock()).orElseThrow();
                kept.add(new KeptForJob(what.job(), null, batch, left));
            }
        });
        return kept;
    }

    private Map<Taken, Integer> taken() {
        Map<Taken, Integer> taken = new HashMap<>();
        facts.of(StockMove.class)
                .inForce()
                .map(Entry::fact)
                .filter(move -> move.job() != null && asOf.counts(move.at()))
                .forEach(move -> taken.merge(new Taken(move.stock(), move.job()), -move.change(), Integer::sum));
        return taken;
    }

    private boolean isOpen(Id<Job> id) {
        return facts.of(Job.class)
                .find(id)
                .filter(Entry::inForce)
                .map(Entry::fact)
                .filter(job -> OpenJobs.isOpen(job, asOf))
                .isPresent();
    }
}
