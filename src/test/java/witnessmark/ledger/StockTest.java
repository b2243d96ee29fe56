package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.JobPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.SentOut;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.ledger.result.StockLevel;
import witnessmark.quantity.Moment;

/** Stock by batch: told examples, and random histories counted item by item. */
class StockTest {
    private static final int HISTORIES_A_SEED = 100;

    private final Story story = new Story();
    private final Id<PartDesign> gasket = story.partDesign("head gasket", PartKind.HEAD_GASKET, true);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 10);
    }

    @ParameterizedTest(name = "from seed {0}00")
    @MethodSource("seeds")
    void every_batch_is_what_counting_it_out_gives(long block) {
        for (long seed = block * HISTORIES_A_SEED; seed < (block + 1) * HISTORIES_A_SEED; seed++) {
            History history = ShelfGenerator.history(seed);
            Facts facts = history.story().facts();
            for (StockLevel level : new Stock(facts, history.asOf()).all()) {
                Counted counted = new Counted(facts, history.asOf());
                Entry<StockBatch> batch = level.batch();
                assertThat(level.onShelf()).as("seed " + seed).isEqualTo(counted.onShelf(batch));
                assertThat(level.kept()).as("seed " + seed).isEqualTo(counted.kept(batch));
                int free = 0;
                int least = 0;
                for (Entry<StockBatch> other : facts.of(StockBatch.class).all()) {
                    if (other.inForce()
                            && other.fact().design().equals(batch.fact().design())) {
                        LocalDate useBy = other.fact().useBy();
                        boolean usable =
                                useBy == null || !useBy.isBefore(history.asOf().day());
                        free += (usable ? counted.onShelf(other) : 0) - counted.kept(other);
                        least = Math.max(least, other.fact().leastToKeep());
                    }
                }
                assertThat(level.freeOfDesign()).as("seed " + seed).isEqualTo(free);
                assertThat(level.missing()).as("seed " + seed).isEqualTo(least > free ? least - free : 0);
                assertThat(level.isShort()).isEqualTo(free < least || free < 0);
                assertThat(level.onOrder()).as("seed " + seed).isEqualTo(counted.onOrder(batch));
            }
        }
    }

    /** Counts by the definition, entry by entry. */
    private record Counted(Facts facts, AsOf asOf) {
        int onShelf(Entry<StockBatch> batch) {
            return moved(batch, null);
        }

        private int moved(Entry<StockBatch> batch, @Nullable Id<Job> job) {
            int sum = 0;
            for (Entry<StockMove> move : facts.of(StockMove.class).all()) {
                if (move.inForce()
                        && move.fact().stock().equals(batch.id())
                        && happened(move.fact().at())
                        && (job == null || job.equals(move.fact().job()))) {
                    sum += move.fact().change();
                }
            }
            return sum;
        }

        /** What each open job wants, less what it took. */
        int kept(Entry<StockBatch> batch) {
            int kept = 0;
            for (Entry<Job> job : facts.of(Job.class).all()) {
                Job fact = job.fact();
                if (!job.inForce() || !happened(fact.asked()) || fact.done() != null && happened(fact.done())) {
                    continue;
                }
                int wants = 0;
                for (Entry<JobPart> part : facts.of(JobPart.class).all()) {
                    if (part.inForce()
                            && part.fact().job().equals(job.id())
                            && batch.id().equals(part.fact().stock())) {
                        wants += part.fact().count();
                    }
                }
                for (int taken = -moved(batch, job.id()); taken > 0 && wants > 0; taken--) {
                    wants--;
                }
                kept += wants;
            }
            return kept;
        }

        int onOrder(Entry<StockBatch> batch) {
            int sum = 0;
            for (Entry<SentOut> sent : facts.of(SentOut.class).all()) {
                SentOut fact = sent.fact();
                if (sent.inForce()
                        && batch.fact().design().equals(fact.design())
                        && happened(fact.from())
                        && (fact.back() == null || !happened(fact.back()))) {
                    sum += fact.count();
                }
            }
            return sum;
        }

        private boolean happened(Moment at) {
            return at.epochMillis()
                    < asOf.day()
                            .plusDays(1)
                            .atStartOfDay(asOf.zone())
                            .toInstant()
                            .toEpochMilli();
        }
    }

    @Test
    void what_a_job_took_is_not_kept_for_it_any_more() {
        Id<StockBatch> batch = batch("L1", 2, null);
        Id<Job> job = job();
        story.add(new JobPart(job, null, batch, 3));
        move(batch, 5, null);
        assertThat(levels()).first().satisfies(level -> {
            assertThat(level.onShelf()).isEqualTo(5);
            assertThat(level.kept()).isEqualTo(3);
            assertThat(level.free()).isEqualTo(2);
            assertThat(level.isShort()).isFalse();
        });
        move(batch, -2, job);
        assertThat(levels()).first().satisfies(level -> {
            assertThat(level.onShelf()).isEqualTo(3);
            assertThat(level.kept()).isEqualTo(1);
            assertThat(level.free()).isEqualTo(2);
        });
        move(batch, -1, null);
        assertThat(levels().get(0).missing()).isEqualTo(1);
    }

    @Test
    void items_past_their_printed_date_are_on_the_shelf_and_not_free() {
        move(batch("old", 1, LocalDate.parse("2026-04-30")), 4, null);
        assertThat(levels()).first().satisfies(level -> {
            assertThat(level.onShelf()).isEqualTo(4);
            assertThat(level.free()).isZero();
            assertThat(level.missing()).isEqualTo(1);
        });
        move(batch("new", 1, LocalDate.parse("2026-05-01")), 1, null);
        assertThat(levels()).allSatisfy(level -> assertThat(level.isShort()).isFalse());
    }

    @Test
    void a_part_kept_for_a_job_is_named_with_it_while_the_job_is_open() {
        Id<Part> part = story.part("HG-01", gasket);
        Id<Job> job = job();
        story.add(new JobPart(job, part, null, 1));
        assertThat(new Stock(story.facts(), Story.asOf("2026-05-01")).keptParts())
                .containsOnlyKeys(part);
        assertThat(new Stock(story.facts(), Story.asOf("2026-04-01")).keptParts())
                .isEmpty();
    }

    private Id<StockBatch> batch(String batch, int least, @Nullable LocalDate useBy) {
        return story.add(new StockBatch(gasket, batch, "", useBy, "", least, ""));
    }

    private Id<Job> job() {
        Moment asked = Story.at("2026-04-20T10:00Z");
        return story.add(new Job("head gasket", null, null, null, null, "", null, null, "", null, asked, "", null, ""));
    }

    private void move(Id<StockBatch> batch, int change, @Nullable Id<Job> job) {
        story.add(
                new StockMove(batch, Story.at("2026-04-25T10:00Z"), change, StockMoveKind.COUNTED, null, job, "", ""));
    }

    private List<StockLevel> levels() {
        return new Stock(story.facts(), Story.asOf("2026-05-01")).all();
    }
}
