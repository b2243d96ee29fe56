package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Job;
import witnessmark.domain.JobPart;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.ledger.result.KeptForJob;

/** What lies ready for each job, against random histories counted entry by entry. */
class KeptForJobsTest {
    private static final int HISTORIES_A_SEED = 100;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 5);
    }

    @ParameterizedTest(name = "from seed {0}00")
    @MethodSource("seeds")
    void each_job_has_what_was_kept_for_it_less_what_was_taken_for_it(long block) {
        for (long seed = block * HISTORIES_A_SEED; seed < (block + 1) * HISTORIES_A_SEED; seed++) {
            History history = ShelfGenerator.history(seed);
            Facts facts = history.story().facts();
            List<KeptForJob> kept = new KeptForJobs(facts, history.asOf()).all();
            for (Entry<Job> job : facts.of(Job.class).all()) {
                boolean isOpen = job.inForce() && OpenJobs.isOpen(job.fact(), history.asOf());
                for (Entry<StockBatch> batch : facts.of(StockBatch.class).all()) {
                    int left = isOpen ? Math.max(0, wanted(facts, job, batch) - taken(facts, history, job, batch)) : 0;
                    assertThat(kept.stream()
                                    .filter(each -> each.job().equals(job.id()) && batch.equals(each.batch()))
                                    .mapToInt(KeptForJob::count))
                            .as("seed " + seed)
                            .isEqualTo(left == 0 ? List.of() : List.of(left));
                }
                long parts = isOpen
                        ? keeps(facts, job).stream()
                                .filter(each -> each.part() != null)
                                .count()
                        : 0;
                assertThat(kept.stream()
                                .filter(each -> each.job().equals(job.id()) && each.part() != null)
                                .count())
                        .as("seed " + seed)
                        .isEqualTo(parts);
            }
        }
    }

    private static List<JobPart> keeps(Facts facts, Entry<Job> job) {
        return facts.of(JobPart.class).all().stream()
                .filter(Entry::inForce)
                .map(Entry::fact)
                .filter(each -> each.job().equals(job.id()))
                .toList();
    }

    private static int wanted(Facts facts, Entry<Job> job, Entry<StockBatch> batch) {
        return keeps(facts, job).stream()
                .filter(each -> batch.id().equals(each.stock()))
                .mapToInt(JobPart::count)
                .sum();
    }

    /** What was brought back counts against it; more brought back than taken is nothing taken. */
    private static int taken(Facts facts, History history, Entry<Job> job, Entry<StockBatch> batch) {
        int sum = 0;
        for (Entry<StockMove> move : facts.of(StockMove.class).all()) {
            if (move.inForce()
                    && job.id().equals(move.fact().job())
                    && batch.id().equals(move.fact().stock())
                    && !move.fact().at().isAfter(history.asOf().last())) {
                sum -= move.fact().change();
            }
        }
        return Math.max(0, sum);
    }
}
