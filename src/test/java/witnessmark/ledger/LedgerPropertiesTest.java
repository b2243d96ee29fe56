package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Build;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.ToldRunning;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** What must hold of any history, whatever the figures are. */
class LedgerPropertiesTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 150);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_order_of_writing_does_not_matter(long seed) {
        History history = HistoryGenerator.history(seed);
        List<Entry<?>> shuffled = new ArrayList<>(history.story().entries());
        Collections.shuffle(shuffled, new Random(seed));
        LifeLedger asWritten = LifeLedger.of(history.story().facts(), history.asOf());
        LifeLedger otherwise = LifeLedger.of(Facts.none().with(shuffled), history.asOf());

        assertThat(Lives.of(otherwise, history)).isEqualTo(Lives.of(asWritten, history));
        for (Id<Part> part : history.parts()) {
            assertThat(otherwise.account(part, Counter.RUNNING)).isEqualTo(asWritten.account(part, Counter.RUNNING));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void splitting_a_run_where_nothing_changes_changes_no_total(long seed) {
        History history = HistoryGenerator.history(seed);
        Facts facts = history.story().facts();
        Entry<Run> whole = splittable(history, facts);
        assumeThat(whole).as("a run with nothing else in its first half").isNotNull();
        SplittableRandom random = new SplittableRandom(seed);
        Run first = share(whole.fact(), random, true);
        Run second = share(whole.fact(), new SplittableRandom(seed), false);
        Facts split = facts.with(List.of(
                new Entry<>(whole.id(), first, whole.standing(), null, whole.rev() + 1),
                new Entry<>(
                        new Id<>(Id.<Run>parse("00000000-0000-7000-8000-0000000fffff")
                                .value()),
                        second,
                        Standing.IN_FORCE,
                        null,
                        1)));

        List<Life> before = Lives.of(LifeLedger.of(facts, history.asOf()), history);
        List<Life> after = Lives.of(LifeLedger.of(split, history.asOf()), history);
        assertThat(after)
                .extracting(Life::total)
                .isEqualTo(before.stream().map(Life::total).toList());
        assertThat(after)
                .extracting(Life::lowest)
                .isEqualTo(before.stream().map(Life::lowest).toList());
        assertThat(after)
                .extracting(Life::highest)
                .isEqualTo(before.stream().map(Life::highest).toList());
        assertThat(after)
                .extracting(Life::complete)
                .isEqualTo(before.stream().map(Life::complete).toList());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void more_running_never_gives_life_back(long seed) {
        History history = HistoryGenerator.history(seed);
        Facts facts = history.story().facts();
        History other = HistoryGenerator.history(seed + 100_000);
        List<Life> before = Lives.of(LifeLedger.of(facts, history.asOf()), history);
        for (Entry<Run> more : other.story().facts().of(Run.class).all()) {
            Entry<Run> added = new Entry<>(
                    new Id<>(new UUID(seed << 16 | 0x7000, more.id().value().getMostSignificantBits())),
                    more.fact(),
                    more.standing(),
                    null,
                    1);
            facts = facts.with(List.of(added));
            List<Life> after = Lives.of(LifeLedger.of(facts, history.asOf()), history);
            for (int i = 0; i < before.size(); i++) {
                assertThat(after.get(i).lowest())
                        .isGreaterThanOrEqualTo(before.get(i).lowest());
                assertThat(after.get(i).total())
                        .isGreaterThanOrEqualTo(before.get(i).total());
                assertThat(after.get(i).highest())
                        .isGreaterThanOrEqualTo(before.get(i).highest());
            }
            before = after;
        }
    }

    @Test
    void no_history_is_a_life_of_nothing() {
        LifeLedger ledger = LifeLedger.of(Facts.none(), Story.asOf("2026-03-01"));
        for (Counter counter : Counter.fedByRuns()) {
            assertThat(ledger.life(id(), counter)).isEqualTo(Life.none(counter));
            assertThat(ledger.engineLife(id(), counter)).isEqualTo(Life.none(counter));
            assertThat(ledger.carLife(id(), counter)).isEqualTo(Life.none(counter));
            assertThat(ledger.account(id(), counter).charges()).isEmpty();
            assertThat(ledger.line(id(), counter)).isEmpty();
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void an_earlier_day_shows_no_more_than_a_later_one_unless_a_prior_life_came_between(long seed) {
        History history = HistoryGenerator.history(seed);
        Facts facts = history.story().facts();
        AsOf later = history.asOf();
        AsOf earlier = new AsOf(later.day().minusDays(3), later.zone());
        LifeLedger now = LifeLedger.of(facts, later);
        LifeLedger then = LifeLedger.of(facts, earlier);
        for (Id<Part> part : history.parts()) {
            boolean restated = facts.of(PriorLife.class)
                    .inForce()
                    .anyMatch(prior -> prior.fact().at().isAfter(earlier.last()));
            if (!restated) {
                assertThat(then.life(part, Counter.RUNNING).total())
                        .isLessThanOrEqualTo(now.life(part, Counter.RUNNING).total());
            }
        }
    }

    private static <F extends Fact> Id<F> id() {
        return Id.parse("00000000-0000-7000-8000-00000000abcd");
    }

    /** A run in force, long enough to split, at whose second half nothing else begins or ends. */
    private static @Nullable Entry<Run> splittable(History history, Facts facts) {
        TreeSet<Long> changes = new TreeSet<>();
        changes.add(history.asOf().last().epochMillis() + 1);
        for (Entry<?> entry : history.story().entries()) {
            for (Moment moment : moments(entry)) {
                changes.add(moment.epochMillis());
            }
        }
        for (Entry<Run> run : facts.of(Run.class).all()) {
            long start = run.fact().start().epochMillis();
            Long next = changes.higher(start);
            long second = start + run.fact().running().millis() / 2;
            if (run.inForce() && run.fact().running().millis() > 1 && (next == null || second < next)) {
                return run;
            }
        }
        return null;
    }

    private static List<Moment> moments(Entry<?> entry) {
        List<Moment> moments = new ArrayList<>();
        @Nullable Moment to = null;
        if (entry.fact() instanceof Fitment fitment) {
            to = fitment.to();
        } else if (entry.fact() instanceof Part part) {
            to = part.splitAt();
        } else if (entry.fact() instanceof Build build) {
            to = build.closed();
        } else if (entry.fact() instanceof EngineInCar stay) {
            to = stay.to();
        } else if (entry.fact() instanceof ToldRunning told) {
            to = told.to();
        }
        if (to != null) {
            moments.add(to);
        }
        if (entry.fact().happened() != null) {
            moments.add(entry.fact().happened());
        }
        return moments;
    }

    /** The first or the second half of a run: every counter is shared out, and known as it was. */
    private static Run share(Run run, SplittableRandom random, boolean firstHalf) {
        long half = run.running().millis() / 2;
        RunDraft draft = new RunDraft(
                run.engine(),
                run.car(),
                firstHalf ? run.start() : run.start().plus(new RunningTime(half)),
                new RunningTime(firstHalf ? half : run.running().millis() - half));
        for (Counter counter : Counter.fedByRuns()) {
            Long amount = run.of(counter);
            HowKnown how = run.knownBy().of(counter);
            draft.knownBy(counter, how);
            if (amount != null && counter != Counter.RUNNING) {
                long first = random.nextLong(amount + 1);
                draft.with(counter, firstHalf ? first : amount - first);
            }
        }
        return draft.perhapsSame(run.perhapsSame()).written();
    }
}
