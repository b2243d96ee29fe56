package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.PartKind;
import witnessmark.domain.Standing;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Counter;

class LifeWordsTest {
    private static final long HOUR = 3_600_000;
    private final Texts texts = Texts.in(Locale.UK);
    private final LifeWords words = new LifeWords(texts, new Measures(texts, Units.METRIC));

    @ParameterizedTest(name = "{0} h known, {1} to {2} h told, {3} h estimated, {5} of {4} runs not read: {7}")
    @CsvSource({
        "9, 0, 0, 0, 5, 0, false, 9.00 h, 9.00 h known",
        "0, 0, 0, 0, 0, 0, false, 0.00 h, 0.00 h known",
        "9, 0, 0, 0, 5, 2, false, at least 9.00 h, '9.00 h known, 2 runs not read'",
        "9, 0, 0, 0, 5, 1, false, at least 9.00 h, '9.00 h known, 1 run not read'",
        "3, 0, 0, 0, 5, 0, true, at least 3.00 h, '3.00 h known, some life before the logbook not known'",
        "0, 0, 0, 0, 5, 2, false, at least 0.00 h, '0.00 h known, 2 runs not read'",
        "0, 0, 0, 0, 5, 5, false, not known, 5 runs not read",
        "0, 0, 0, 0, 0, 0, true, not known, some life before the logbook not known",
        "0, 8, 14, 0, 1, 0, false, 8 to 14 h, 8 to 14 h told",
        "1, 8, 14, 0, 2, 0, false, 9 to 15 h, '1.00 h known, 8 to 14 h told'",
        "1, 8, 14, 2, 2, 1, false, at least 11.00 h, '1.00 h known, 8 to 14 h told, 2.00 h estimated, 1 run not read'",
        "1, 8, 8, 0, 2, 0, false, about 9.00 h, '1.00 h known, 8 h told'",
        "1, 0, 0, 2, 2, 0, false, about 3.00 h, '1.00 h known, 2.00 h estimated'",
        "0, 0, 0, 2, 2, 0, false, about 2.00 h, 2.00 h estimated",
        "0, 0, 3, 0, 2, 0, false, 0 to 3 h, 0 to 3 h told",
    })
    void a_life_says_how_well_it_is_known(
            long known,
            long low,
            long high,
            long estimated,
            int runs,
            int unread,
            boolean least,
            String life,
            String basis) {
        Life shown = life(known, low, high, estimated, least, runs, unread);
        assertThat(words.life(shown)).isEqualTo(life);
        assertThat(words.basis(shown)).isEqualTo(basis);
    }

    @ParameterizedTest(name = "{0} h known and {1} runs not read against a limit of 10 h: {2}")
    @CsvSource({
        "9, 0, 1.0 h to its limit",
        "9, 1, at most 1.0 h to its limit",
        "10, 0, at its limit",
        "10, 1, at its limit",
        "12, 0, 2.0 h over",
        "12, 1, at least 2.0 h over",
    })
    void a_life_says_how_it_stands_to_its_limit(long known, int unread, String shown) {
        assertThat(words.limit(use(life(known, 0, 0, 0, false, 5, unread)))).isEqualTo(shown);
    }

    @Test
    void told_running_is_held_against_the_limit_at_its_high_end() {
        assertThat(words.limit(use(life(1, 4, 8, 0, false, 1, 0)))).isEqualTo("at least 1.0 h to its limit");
        assertThat(words.limit(use(life(1, 4, 12, 0, false, 1, 0)))).isEqualTo("perhaps 3.0 h over");
        assertThat(words.limit(use(life(6, 4, 12, 0, false, 1, 0)))).isEqualTo("about 8.0 h over");
    }

    @ParameterizedTest(name = "a life not known in full never looks as if it were, seed {0}")
    @ValueSource(longs = {1, 2})
    void a_life_not_known_in_full_never_looks_as_if_it_were(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            int runs = 1 + random.nextInt(9);
            int low = random.nextInt(3);
            Life life = life(
                    random.nextInt(3),
                    low,
                    low + random.nextInt(3),
                    random.nextInt(2),
                    random.nextBoolean(),
                    runs,
                    random.nextInt(runs + 1));
            boolean hedged = words.life(life).matches("(at least|about) .*|not known|.* to .*");
            boolean exact = life.complete() && life.estimated() == 0 && life.toldHighest() == 0;
            assertThat(hedged).as(life.toString()).isEqualTo(!exact);
        }
    }

    @ParameterizedTest(name = "how a life not known in full stands to a limit never looks exact, seed {0}")
    @ValueSource(longs = {3, 4})
    void how_a_life_not_known_in_full_stands_to_a_limit_never_looks_exact(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            int runs = 1 + random.nextInt(9);
            int low = random.nextInt(6);
            Life life = life(
                    random.nextInt(9),
                    low,
                    low + random.nextInt(4),
                    random.nextInt(2),
                    random.nextInt(4) == 0,
                    runs,
                    random.nextInt(3) == 0 ? random.nextInt(runs + 1) : 0);
            boolean exact = life.complete() && life.estimated() == 0 && life.toldHighest() == 0;
            String shown = words.limit(use(life));
            boolean hedged = shown.matches("(at least|at most|about|perhaps) .*");
            assertThat(hedged || !life.complete() && shown.equals("at its limit"))
                    .as(shown + ": " + life)
                    .isEqualTo(!exact);
            assertThat(words.brief(life).matches("(at least|about) .*|not known"))
                    .as(words.brief(life))
                    .isEqualTo(!exact);
        }
    }

    private static Life life(long known, long low, long high, long estimated, boolean least, int runs, int unread) {
        return new Life(
                Counter.RUNNING,
                known * HOUR,
                (low + high) / 2 * HOUR,
                low * HOUR,
                high * HOUR,
                estimated * HOUR,
                least,
                runs,
                unread);
    }

    private static LimitUse use(Life used) {
        Limit limit = new Limit(
                "valve springs",
                LimitAction.RENEW,
                null,
                PartKind.VALVE_SPRINGS,
                null,
                null,
                null,
                null,
                Counter.RUNNING,
                10 * HOUR,
                LimitRank.OWN,
                "",
                LocalDate.of(2026, 1, 1),
                null);
        Entry<Limit> entry = new Entry<>(new Id<>(new UUID(0, 1)), limit, Standing.IN_FORCE, null, 1);
        return new LimitUse(entry, null, null, null, null, used, entry.fact().amount(), null, null);
    }
}
