package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.at;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.Zone;
import witnessmark.quantity.Counter;

/** A ledger made from the one before a change is the ledger of the facts after it, and keeps what was not touched. */
class LedgerAfterAChangeTest {
    private static final List<Class<? extends Fact>> CHANGING = List.of(
            Run.class, Fitment.class, PriorLife.class, ToldRunning.class, Work.class, Build.class, EngineInCar.class);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 150);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void after_any_changes_it_is_what_a_fresh_computation_gives(long seed) {
        History history = HistoryGenerator.history(seed);
        SplittableRandom random = new SplittableRandom(seed);
        Facts facts = history.story().facts();
        LifeLedger ledger = LifeLedger.of(facts, history.asOf());
        Lives.of(ledger, history);
        for (int step = 0; step < 8; step++) {
            facts = facts.with(changes(facts, seed * 10 + step, random));
            ledger = ledger.after(facts);
            same(ledger, LifeLedger.of(facts, history.asOf()), history);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void of_other_facts_altogether_it_is_made_afresh(long seed) {
        History history = HistoryGenerator.history(seed);
        Facts other = HistoryGenerator.history(seed + 1000).story().facts();
        LifeLedger ledger = LifeLedger.of(history.story().facts(), history.asOf());
        same(ledger.after(other), LifeLedger.of(other, history.asOf()), history);
        List<Entry<?>> turned = new ArrayList<>(history.story().entries());
        Collections.reverse(turned);
        Facts reversed = Facts.none().with(turned.subList(0, turned.size() / 2));
        same(ledger.after(reversed), LifeLedger.of(reversed, history.asOf()), history);
    }

    @Test
    void a_run_saved_leaves_the_lines_of_other_engines_and_cars_as_they_were() {
        History history = HistoryGenerator.history(7);
        Facts facts = history.story().facts();
        Cutoff cutoff = Cutoff.NEVER;
        Running before = Running.of(facts, cutoff);
        Id<Engine> engine = history.engines().get(0);
        Facts newer = facts.with(List.of(new Entry<Run>(
                new Id<>(new UUID(0x7000, 1)),
                new RunDraft(engine, history.cars().get(0), at("2026-03-25T10:00Z"), Story.minutes(20)).written(),
                Standing.IN_FORCE,
                null,
                1)));
        Running after = before.after(facts, newer, cutoff);

        assertThat(after.of(engine)).isNotSameAs(before.of(engine));
        assertThat(after.of(history.engines().get(1)))
                .isSameAs(before.of(history.engines().get(1)));
        assertThat(after.ofCar(history.cars().get(0)))
                .isNotSameAs(before.ofCar(history.cars().get(0)));
        assertThat(after.ofCar(history.cars().get(1)))
                .isSameAs(before.ofCar(history.cars().get(1)));
    }

    private static void same(LifeLedger ledger, LifeLedger fresh, History history) {
        assertThat(Lives.of(ledger, history)).isEqualTo(Lives.of(fresh, history));
        for (Id<Part> part : history.parts()) {
            if (fresh.facts().of(Part.class).find(part).isPresent()) {
                assertThat(ledger.account(part, Counter.RUNNING)).isEqualTo(fresh.account(part, Counter.RUNNING));
                assertThat(ledger.sinceWork(part, WorkKind.LOOK, Counter.RUNNING))
                        .isEqualTo(fresh.sinceWork(part, WorkKind.LOOK, Counter.RUNNING));
                assertThat(ledger.whereIs(part, history.asOf().last()))
                        .isEqualTo(fresh.whereIs(part, history.asOf().last()));
            }
        }
        history.engines().forEach(engine -> {
            assertThat(ledger.fittedAt(engine, history.asOf().last()))
                    .isEqualTo(fresh.fittedAt(engine, history.asOf().last()));
            assertThat(ledger.carOf(engine, history.asOf().last()))
                    .isEqualTo(fresh.carOf(engine, history.asOf().last()));
            assertThat(ledger.lastClosed(engine, Set.of(Zone.HEAD)))
                    .isEqualTo(fresh.lastClosed(engine, Set.of(Zone.HEAD)));
        });
        history.cars()
                .forEach(car -> assertThat(ledger.engineIn(car, history.asOf().last()))
                        .isEqualTo(fresh.engineIn(car, history.asOf().last())));
    }

    /** Some entries struck out or restored, some written anew with the fact of another, some new. */
    private static List<Entry<?>> changes(Facts facts, long seed, SplittableRandom random) {
        Facts other = HistoryGenerator.history(seed + 5000).story().facts();
        List<Entry<?>> changes = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            changes.add(change(CHANGING.get(random.nextInt(CHANGING.size())), facts, other, random, seed * 3 + i));
        }
        return changes;
    }

    private static <F extends Fact> Entry<F> change(
            Class<F> kind, Facts facts, Facts other, SplittableRandom random, long number) {
        List<Entry<F>> now = facts.of(kind).all();
        List<Entry<F>> others = other.of(kind).all();
        Entry<F> drawn = others.get(random.nextInt(others.size()));
        Entry<F> old = now.get(random.nextInt(now.size()));
        return switch (random.nextInt(3)) {
            case 0 ->
                new Entry<>(
                        old.id(),
                        old.fact(),
                        old.inForce() ? Standing.STRUCK_OUT : Standing.IN_FORCE,
                        null,
                        old.rev() + 1);
            case 1 -> new Entry<>(old.id(), drawn.fact(), drawn.standing(), null, old.rev() + 1);
            default ->
                new Entry<>(new Id<>(new UUID(number << 16 | 0x7000, 5)), drawn.fact(), drawn.standing(), null, 1);
        };
    }
}
