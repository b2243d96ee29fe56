package witnessmark.quantity.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.quantity.Money;

/** The forms are common practice, no source. */
class TypedMoneyTest {
    private static final Currency EUR = Currency.getInstance("EUR");

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "520 | 520.00 EUR",
                "520.5 | 520.50 EUR",
                "520,50 | 520.50 EUR",
                ".5 | 0.50 EUR",
                "1 037 | 1037.00 EUR",
                "1 037.50 | 1037.50 EUR",
                "1.037,50 | 1037.50 EUR",
                "1,037.50 | 1037.50 EUR",
                "1'037.50 | 1037.50 EUR",
                "1,234,567 | 1234567.00 EUR",
                "-16 | -16.00 EUR",
                "−16.05 | -16.05 EUR",
                "520 € | 520.00 EUR",
                "€520 | 520.00 EUR",
                "-€ 5 | -5.00 EUR",
                "€ -5 | -5.00 EUR",
                "GBP 24 | 24.00 GBP",
                "24 gbp | 24.00 GBP",
                "£24.10 | 24.10 GBP",
                "$24 | 24.00 USD",
                "JPY 24 000 | 24000 JPY",
                "24,000 JPY | 24000 JPY",
                "1.500 KWD | 1.500 KWD",
                "1,234.500 KWD | 1234.500 KWD",
                "0 | 0.00 EUR",
            })
    void an_amount_is_read_as_people_write_it(String text, String expected) {
        assertThat(TypedMoney.read(text, EUR)).isEqualTo(new Typed.Read<>(Money.parse(expected), text));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"12.345, 12345.00 EUR, 12.35 EUR", "'1,500', 1500.00 EUR, 1.50 EUR"})
    void a_figure_with_three_figures_behind_a_point_is_asked_about(String text, String first, String second) {
        assertThat(TypedMoney.read(text, EUR)).isEqualTo(new Typed.Two<>(Money.parse(first), Money.parse(second)));
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(
            strings = {
                "",
                "abc",
                "EUR",
                "12.3456",
                "1.2.3",
                "12,34,56",
                "12 34",
                "5 €€",
                "EUR 5 EUR",
                "--5",
                "- -5",
                "5 XTS",
                "5 QQQ",
                "1e3",
                "12 h",
                "99999999999999999999",
                "(5)",
                "1.037.50"
            })
    void what_is_no_amount_is_not_read(String text) {
        assertThat(TypedMoney.read(text, EUR)).isInstanceOf(Typed.Unreadable.class);
    }

    @Test
    void the_example_can_itself_be_read_in_every_currency() {
        for (String code : new String[] {"EUR", "JPY", "KWD"}) {
            Currency own = Currency.getInstance(code);
            if (TypedMoney.read("?", own) instanceof Typed.Unreadable<Money> no) {
                assertThat(TypedMoney.read(no.example(), own).only()).isPresent();
            }
        }
    }
}
