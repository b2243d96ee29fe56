package witnessmark.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
    private static final Currency EUR = Currency.getInstance("EUR");

    /** Minor units: ISO 4217, list one (EUR 2, JPY 0, KWD 3, CLP 0, TND 3), from memory. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"1.00 EUR, 100", "1 JPY, 1", "1.000 KWD, 1000", "250 CLP, 250", "0.001 TND, 1", "-16.05 EUR, -1605"})
    void an_amount_is_held_in_the_minor_units_of_its_currency(String text, long minor) {
        Money money = Money.parse(text);
        assertThat(money.minor()).isEqualTo(minor);
        assertThat(money.text()).isEqualTo(text);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(
            strings = {
                "",
                "EUR",
                "12",
                "12.345 EUR",
                "0.5 JPY",
                "12 EURO",
                "12 XTS",
                "99999999999999999999 EUR",
                "1e999 EUR"
            })
    void what_nobody_can_pay_is_refused(String text) {
        assertThatThrownBy(() -> Money.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void amounts_of_two_currencies_are_not_added() {
        assertThatThrownBy(() -> Money.parse("1.00 EUR").plus(Money.parse("1.00 GBP")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_sum_beyond_what_can_be_held_is_refused_rather_than_wrong() {
        Money most = new Money(Long.MAX_VALUE, EUR);
        assertThatThrownBy(() -> most.plus(new Money(1, EUR))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new Money(Long.MIN_VALUE, EUR).negated()).isInstanceOf(ArithmeticException.class);
    }

    /** Worked by hand: 450.00 at 1.0432 is 469.44; 1 at 0.005 is half a cent, away from nothing. */
    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({
        "450.00 CHF, 1.0432, 469.44 EUR",
        "1 JPY, 0.005, 0.01 EUR",
        "-1 JPY, 0.005, -0.01 EUR",
        "1 JPY, 0.0049, 0.00 EUR",
        "1.005 KWD, 3, 3.02 EUR",
    })
    void at_a_rate_it_is_rounded_once_halves_away_from_nothing(String from, BigDecimal rate, String to) {
        assertThat(Money.parse(from).in(EUR, rate)).isEqualTo(Money.parse(to));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void text_comes_back_as_the_same_amount(long seed) {
        Random random = new Random(seed);
        for (String code : new String[] {"EUR", "JPY", "KWD"}) {
            for (int i = 0; i < 1000; i++) {
                Money money = new Money(random.nextLong(), Currency.getInstance(code));
                assertThat(Money.parse(money.text())).isEqualTo(money);
            }
        }
    }
}
