package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** The ledger against the same sums done the long way, over thousands of odd histories. */
class LedgerAgainstPlainSumsTest {
    private static final int HISTORIES_A_SEED = 100;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 25);
    }

    @ParameterizedTest(name = "from seed {0}00")
    @MethodSource("seeds")
    void every_life_is_what_the_long_way_gives(long block) {
        forEachHistory(block, (history, ledger, plain, random) -> {
            for (Counter counter : counters(random)) {
                for (Id<Part> part : history.parts()) {
                    assertThat(ledger.life(part, counter)).isEqualTo(plain.life(part, counter, null));
                }
                for (Id<Engine> engine : history.engines()) {
                    assertThat(ledger.engineLife(engine, counter)).isEqualTo(plain.engineLife(engine, counter, null));
                }
                for (Id<Car> car : history.cars()) {
                    assertThat(ledger.carLife(car, counter)).isEqualTo(plain.carLife(car, counter));
                }
            }
        });
    }

    @ParameterizedTest(name = "from seed {0}00")
    @MethodSource("seeds")
    void every_life_since_something_is_what_the_long_way_gives(long block) {
        forEachHistory(block, (history, ledger, plain, random) -> {
            Counter counter = counters(random).iterator().next();
            Moment since = someMoment(history, random);
            WorkKind kind = WorkKind.values()[random.nextInt(WorkKind.values().length)];
            for (Id<Part> part : history.parts()) {
                assertThat(ledger.since(part, counter, since)).isEqualTo(plain.life(part, counter, since));
                assertThat(ledger.sinceWork(part, kind, counter))
                        .isEqualTo(plain.life(part, counter, lastWork(plain, history, part, kind)));
            }
            Zone zone = Zone.values()[random.nextInt(Zone.values().length)];
            for (Id<Engine> engine : history.engines()) {
                assertThat(ledger.engineSince(engine, counter, since))
                        .isEqualTo(plain.engineLife(engine, counter, since));
                assertThat(ledger.sinceRebuild(engine, Set.of(zone), counter))
                        .isEqualTo(plain.engineLife(engine, counter, lastClosed(plain, history, engine, zone)));
            }
        });
    }

    @ParameterizedTest(name = "from seed {0}00")
    @MethodSource("seeds")
    void every_account_adds_up_to_its_life_and_leaves_no_run_out(long block) {
        forEachHistory(block, (history, ledger, plain, random) -> {
            Counter counter = counters(random).iterator().next();
            Moment since = someMoment(history, random);
            for (Id<Part> part : history.parts()) {
                Account account = ledger.account(part, counter);
                addsUp(account, ledger.life(part, counter));
                addsUp(ledger.account(part, counter, since), ledger.since(part, counter, since));
                assertThat(account.charges().stream()
                                .map(Charge::source)
                                .filter(source -> source.fact() instanceof Run)
                                .map(source -> source.id().value())
                                .distinct())
                        .containsExactlyInAnyOrderElementsOf(
                                plain.chargedTo(part).stream().map(Id::value).toList());
            }
            for (Id<Engine> engine : history.engines()) {
                addsUp(ledger.engineAccount(engine, counter), ledger.engineLife(engine, counter));
                addsUp(ledger.engineAccount(engine, counter, since), ledger.engineSince(engine, counter, since));
                var line = ledger.line(engine, counter);
                Life life = ledger.engineLife(engine, counter);
                assertThat(line.isEmpty() ? 0 : line.get(line.size() - 1).likely())
                        .isEqualTo(life.total());
                assertThat(line.isEmpty() ? 0 : line.get(line.size() - 1).lowest())
                        .isEqualTo(life.lowest());
                assertThat(line.isEmpty() ? 0 : line.get(line.size() - 1).highest())
                        .isEqualTo(life.highest());
            }
        });
    }

    private static void addsUp(Account account, Life life) {
        assertThat(account.life()).isEqualTo(life);
        List<Charge> charges = account.charges();
        assertThat(charges.stream().mapToLong(Charge::amount).sum()).isEqualTo(life.total());
        assertThat(charges.stream().mapToLong(Charge::lowest).sum()).isEqualTo(life.lowest());
        assertThat(charges.stream().mapToLong(Charge::highest).sum()).isEqualTo(life.highest());
        assertThat(charges.stream().filter(charge -> charge.counted() == Counted.NOT_READ))
                .hasSize(life.runsNotRead());
        assertThat(charges.stream()
                        .filter(charge -> !(charge.source().fact() instanceof PriorLife))
                        .filter(charge -> charge.counted() == Counted.YES || charge.counted() == Counted.NOT_READ))
                .hasSize(life.runs());
        List<Moment> ran = charges.stream()
                .filter(charge -> charge.fitment() != null)
                .map(Charge::at)
                .toList();
        assertThat(ran).isSortedAccordingTo(Moment::compareTo);
    }

    private static @Nullable Moment lastWork(PlainSums plain, History history, Id<Part> part, WorkKind kind) {
        Moment last = null;
        Id<Part> of = part;
        long until = Long.MAX_VALUE;
        while (of != null) {
            for (Entry<Work> work : plain.counting(Work.class)) {
                Work fact = work.fact();
                if (of.equals(fact.part())
                        && fact.kind() == kind
                        && fact.result() == WorkResult.DONE
                        && fact.at().epochMillis() <= until
                        && (last == null || last.isBefore(fact.at()))) {
                    last = fact.at();
                }
            }
            Part fact = history.story().facts().of(Part.class).get(of);
            until = fact.splitAt() == null
                    ? until
                    : Math.min(until, fact.splitAt().epochMillis());
            of = fact.ofSet();
        }
        return last;
    }

    private static @Nullable Moment lastClosed(PlainSums plain, History history, Id<Engine> engine, Zone zone) {
        Moment last = null;
        for (Entry<Build> build : plain.counting(Build.class)) {
            Moment closed = build.fact().closed();
            if (closed != null
                    && build.fact().engine().equals(engine)
                    && history.asOf().counts(closed)
                    && build.fact().zones().contains(zone)
                    && (last == null || last.isBefore(closed))) {
                last = closed;
            }
        }
        return last;
    }

    private interface Check {
        void on(History history, LifeLedger ledger, PlainSums plain, SplittableRandom random);
    }

    private static void forEachHistory(long block, Check check) {
        for (long seed = block * HISTORIES_A_SEED; seed < (block + 1) * HISTORIES_A_SEED; seed++) {
            History history = HistoryGenerator.history(seed);
            var facts = history.story().facts();
            try {
                check.on(
                        history,
                        LifeLedger.of(facts, history.asOf()),
                        new PlainSums(facts, history.asOf()),
                        new SplittableRandom(seed));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("the history of seed " + seed, e);
            }
        }
    }

    /** Running time and one other. */
    private static EnumSet<Counter> counters(SplittableRandom random) {
        return EnumSet.of(
                random.nextBoolean() ? Counter.RUNNING : Counter.OVER_REVS,
                Counter.fedByRuns().get(random.nextInt(Counter.fedByRuns().size())));
    }

    /** The moment of something in the history. */
    private static Moment someMoment(History history, SplittableRandom random) {
        List<Moment> moments = new ArrayList<>();
        for (Entry<?> entry : history.story().entries()) {
            Fact fact = entry.fact();
            if (fact.happened() != null) {
                moments.add(fact.happened());
            }
        }
        return moments.get(random.nextInt(moments.size()));
    }
}
