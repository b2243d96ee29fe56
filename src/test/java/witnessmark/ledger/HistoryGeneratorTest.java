package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;

/** The seeded histories hold the oddities they are for, or the tests on them would show little. */
class HistoryGeneratorTest {
    @Test
    void a_seed_always_gives_the_same_history() {
        assertThat(HistoryGenerator.history(42).story().entries())
                .isEqualTo(HistoryGenerator.history(42).story().entries())
                .isNotEqualTo(HistoryGenerator.history(43).story().entries());
    }

    @Test
    void small_histories_are_odd_in_every_way_that_matters() {
        long told = 0;
        long atLeast = 0;
        long notRead = 0;
        long aside = 0;
        long beforePrior = 0;
        long members = 0;
        long onTheDot = 0;
        long inCars = 0;
        for (long seed : LongStream.range(0, 100).toArray()) {
            History history = HistoryGenerator.history(seed);
            Facts facts = history.story().facts();
            LifeLedger ledger = LifeLedger.of(facts, history.asOf());
            for (var part : history.parts()) {
                Life life = ledger.life(part, Counter.RUNNING);
                told += life.toldHighest() > life.toldLowest() ? 1 : 0;
                atLeast += life.atLeast() ? 1 : 0;
                notRead += ledger.life(part, Counter.LAPS).runsNotRead() > 0 ? 1 : 0;
                for (Charge charge : ledger.account(part, Counter.RUNNING).charges()) {
                    aside += charge.counted() == Counted.PERHAPS_SAME ? 1 : 0;
                    beforePrior += charge.counted() == Counted.BEFORE_PRIOR_LIFE ? 1 : 0;
                    inCars +=
                            charge.fitment() != null && charge.fitment().fact().car() != null ? 1 : 0;
                }
                Part fact = facts.of(Part.class).get(part);
                members += fact.ofSet() != null && life.runs() > 0 ? 1 : 0;
            }
            onTheDot += facts.of(Fitment.class).all().stream()
                    .filter(fitment -> facts.of(Run.class).all().stream()
                            .anyMatch(run ->
                                    run.fact().start().compareTo(fitment.fact().from()) == 0))
                    .count();
        }
        assertThat(LongStream.of(told, atLeast, notRead, aside, beforePrior, members, onTheDot, inCars))
                .as("told, at least, not read, aside, before prior, members, on the dot, in cars")
                .allMatch(count -> count >= 20);
    }
}
