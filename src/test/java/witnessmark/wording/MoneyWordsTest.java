package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Amounts for each hour run: worked by hand. */
class MoneyWordsTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final MoneyWords WORDS = new MoneyWords(TEXTS, new Measures(TEXTS, Units.METRIC));

    @Test
    void an_amount_is_shared_among_the_hours_run_to_whole_units() {
        Money springs = Money.parse("738.00 EUR");
        assertThat(WORDS.perHour(springs, new RunningTime(90 * 60_000L))).isEqualTo("492 EUR an hour run");
        assertThat(WORDS.perHour(Money.parse("1.49 EUR"), new RunningTime(3_600_000L)))
                .isEqualTo("1 EUR an hour run");
    }

    @Test
    void where_nothing_ran_nothing_is_said() {
        assertThat(WORDS.perHour(Money.parse("738.00 EUR"), RunningTime.NONE)).isEmpty();
        assertThat(WORDS.perHour(Money.parse("738.00 EUR"), null)).isEmpty();
    }
}
