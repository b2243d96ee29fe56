package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;

class AmountsTest {
    private final Texts texts = Texts.in(Locale.UK);
    private final Amounts amounts = new Amounts(texts, new Measures(texts, Units.METRIC));
    private final Amounts imperial = new Amounts(texts, new Measures(texts, Units.IMPERIAL));

    @ParameterizedTest(name = "{1} of {0} is {2}, roughly {3}")
    @CsvSource({
        "RUNNING, 46332000, 12.87 h, 12.9 h",
        "LOADED, 3600000, 1.00 h, 1.0 h",
        "HIGH_SPEED, 0, 0.00 h, 0.0 h",
        "DISTANCE, 310400, 310.4 km, 310.4 km",
        "LAPS, 1, 1 lap, 1 lap",
        "LAPS, 0, 0 laps, 0 laps",
        "LAPS, 1310, 1\u2009310 laps, 1\u2009310 laps",
        "RACE_STARTS, 9, 9 race starts, 9 race starts",
        "ENGINE_STARTS, 1, 1 engine start, 1 engine start",
        "HEAT_CYCLES, 14, 14 heat cycles, 14 heat cycles",
        "PULLS, 2, 2 pulls, 2 pulls",
        "OVER_REVS, 1, 1 over-rev, 1 over-rev",
    })
    void an_amount_is_shown_in_the_unit_of_its_counter(Counter counter, long amount, String fine, String rough) {
        assertThat(amounts.amount(counter, amount)).isEqualTo(fine);
        assertThat(amounts.rough(counter, amount)).isEqualTo(rough);
    }

    @ParameterizedTest(name = "{0} to {1} h is {2}")
    @CsvSource({
        "8, 14, 8 to 14 h",
        "1.9, 2.4, 1.9 to 2.4 h",
        "8, 14.25, 8.00 to 14.25 h",
        "8.5, 14, 8.5 to 14.0 h",
        "9, 9, 9 h",
        "9.001, 9.002, 9 h",
        "0, 3, 0 to 3 h",
    })
    void a_range_has_as_many_decimals_as_either_end_needs(BigDecimal low, BigDecimal high, String shown) {
        assertThat(amounts.range(
                        Counter.RUNNING,
                        RunningTime.ofHours(low).millis(),
                        RunningTime.ofHours(high).millis()))
                .isEqualTo(shown);
    }

    @ParameterizedTest(name = "{1} to {2} of {0} is {3}")
    @CsvSource({
        "AGE, 1, 1, 1 month",
        "AGE, 60, 60, 60 months",
        "AGE, 12, 24, 12 to 24 months",
        "LAPS, 3, 5, 3 to 5 laps"
    })
    void a_limit_of_age_is_in_months(Counter counter, long low, long high, String shown) {
        assertThat(amounts.limits(counter, low, high)).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{1} to {2} of {0} is {3}")
    @CsvSource({
        "LAPS, 3, 5, 3 to 5 laps",
        "RACE_STARTS, 0, 1, 0 to 1 race start",
        "DISTANCE, 100000, 150500, 100.0 to 150.5 km",
        "OVER_REVS, 1, 1, 1 over-rev",
    })
    void a_range_of_any_counter_has_its_unit(Counter counter, long low, long high, String shown) {
        assertThat(amounts.range(counter, low, high)).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{1} of {0} past a limit is {2}")
    @CsvSource({
        "RUNNING, 3240000, 0.9 h over",
        "RUNNING, 0, at its limit",
        "RUNNING, 144000, 0.04 h over",
        "RUNNING, 14000, 14 s over",
        "RUNNING, 1, 1 s over",
        "DISTANCE, 49, 49 m over",
        "DISTANCE, 50, 0.1 km over",
        "LAPS, 1, 1 lap over",
        "RACE_STARTS, 2, 2 race starts over",
    })
    void what_is_past_its_limit_never_rounds_to_nothing(Counter counter, long past, String shown) {
        assertThat(amounts.over(counter, past)).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{1} of {0} left is {2}")
    @CsvSource({
        "RUNNING, 24120000, 6.7 h to its limit",
        "RUNNING, 36000, 0.01 h to its limit",
        "RUNNING, 0, at its limit",
        "LAPS, 3, 3 laps to its limit",
    })
    void what_is_left_is_said(Counter counter, long left, String shown) {
        assertThat(amounts.toLimit(counter, left)).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0} is shown in imperial units too")
    @EnumSource
    void every_counter_can_be_shown_in_either_choice_of_units(Counter counter) {
        assertThat(amounts.amount(counter, 7)).matches("[0-9.]+ [a-z -]+");
        assertThat(imperial.amount(counter, 7)).matches("[0-9.]+ [a-z -]+");
        assertThat(imperial.amount(Counter.DISTANCE, 160_934)).isEqualTo("100.0 mi");
    }
}
