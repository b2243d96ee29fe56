package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.domain.Fact;
import witnessmark.domain.Limit;
import witnessmark.domain.PriorLife;
import witnessmark.quantity.Counter;

/** Amounts in a season folder say their unit; one hour is 3 600 seconds, one kilometre 1 000 metres. */
class AmountTextTest {
    @ParameterizedTest(name = "{0} {1} is written {2}")
    @CsvSource({
        "RUNNING, 43200000, 12 h",
        "RUNNING, 81000000, 22.5 h",
        "RUNNING, 58000000, 58000 s",
        "LOADED, 1, 0.001 s",
        "RUNNING, 0, 0 h",
        "DISTANCE, 2310400, 2310.4 km",
        "DISTANCE, 7, 0.007 km",
        "AGE, 60, 60 months",
        "USES, 1, 1 use",
        "RACE_STARTS, 30, 30 race starts",
        "OVER_REVS, 1, 1 over-rev"
    })
    void an_amount_is_written_with_its_unit(Counter counter, long amount, String text) {
        assertThat(new AmountText(Limit.class, counter).of(amount)).isEqualTo(text);
    }

    @ParameterizedTest(name = "{0}, seed 20260728")
    @EnumSource
    void what_is_written_is_read_back_exactly(Counter counter) {
        Random random = new Random(20260728);
        for (int i = 0; i < 2_000; i++) {
            long amount = random.nextLong(i % 2 == 0 ? 100_000 : 1_000_000_000_000L);
            for (Class<? extends Fact> kind : List.of(Limit.class, PriorLife.class)) {
                AmountText written = new AmountText(kind, counter);
                assertThat(written.read(written.of(amount)))
                        .as(written.of(amount))
                        .isEqualTo(amount);
            }
        }
    }

    @ParameterizedTest(name = "{0} {1} is read as {2}")
    @CsvSource({
        "RUNNING, 12h, 43200000",
        "RUNNING, 12 H, 43200000",
        "RUNNING, 90 min, 5400000",
        "RUNNING, 43200 s, 43200000",
        "RUNNING, 43200000, 43200000",
        "RUNNING, 0, 0",
        "DISTANCE, 500 m, 500",
        "DISTANCE, 2310400, 2310400",
        "USES, 1, 1",
        "USES, 1 uses, 1",
        "AGE, 60, 60"
    })
    void an_amount_written_by_hand_or_before_units_were_is_read(Counter counter, String text, long amount) {
        assertThat(new AmountText(Limit.class, counter).read(text)).isEqualTo(amount);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "RUNNING, 12",
        "RUNNING, 12 km",
        "RUNNING, 12 hours or so",
        "RUNNING, -12 h",
        "RUNNING, '12,5 h'",
        "RUNNING, 0.0000001 h",
        "RUNNING, 999999999999999999 h",
        "RUNNING, ''",
        "DISTANCE, 12",
        "DISTANCE, 0.0001 km",
        "USES, 1.5",
        "USES, 3 laps",
        "AGE, 60 days"
    })
    void a_figure_that_does_not_say_what_it_is_is_not_guessed(Counter counter, String text) {
        assertThatThrownBy(() -> new AmountText(Limit.class, counter).read(text))
                .isInstanceOf(RuntimeException.class);
    }

    @Test
    void an_age_carried_in_is_in_days() {
        assertThat(new AmountText(PriorLife.class, Counter.AGE).of(400)).isEqualTo("400 days");
        assertThat(new AmountText(PriorLife.class, Counter.AGE).read("400 days"))
                .isEqualTo(400);
    }
}
