package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What was read stands in a season folder with its unit; prefixes and the bar (100 kPa) as in the SI Brochure, 9th ed. */
class ReadingTextTest {
    @ParameterizedTest(name = "{1} in {0} is written {2}")
    @CsvSource({
        "NEWTON, 291000, 291 N",
        "MILLIMETRE, 250000, 0.25 mm",
        "MILLIMETRE, 1, 0.000001 mm",
        "PERCENT, 1000, 10 %",
        "PERCENT, -50, -0.5 %",
        "KILOPASCAL, 430000, 430 kPa",
        "BRINELL, 1105, 110.5 HBW",
        "MILLIGRAM_PER_KILOGRAM, 0, 0 mg/kg"
    })
    void a_figure_is_written_with_its_unit(ReadingText unit, long figure, String text) {
        assertThat(unit.of(figure)).isEqualTo(text);
        assertThat(unit.read(text)).isEqualTo(figure);
    }

    @ParameterizedTest(name = "{0}, seed 20261129")
    @EnumSource
    void what_is_written_is_read_back_exactly(ReadingText unit) {
        Random random = new Random(20261129);
        for (int i = 0; i < 2_000; i++) {
            long figure = random.nextLong(i % 2 == 0 ? 100_000 : 1_000_000_000_000L);
            assertThat(unit.read(unit.of(figure))).as(unit.of(figure)).isEqualTo(figure);
        }
    }

    @ParameterizedTest(name = "{1} in {0} is read as {2}")
    @CsvSource({
        "NEWTON, 291n, 291000",
        "NEWTON, 291000, 291000",
        "KILOPASCAL, 4.3 bar, 430000",
        "PERCENT, 0, 0",
        "PERCENT, 800, 800"
    })
    void a_figure_written_by_hand_or_before_units_were_is_read(ReadingText unit, String text, long figure) {
        assertThat(unit.read(text)).isEqualTo(figure);
    }

    @ParameterizedTest(name = "{1} in {0}")
    @CsvSource({
        "NEWTON, 291",
        "NEWTON, 291 kN",
        "MILLIMETRE, 0.25",
        "MILLIMETRE, 0.0000001 mm",
        "MILLIMETRE, '0,25 mm'",
        "PERCENT, 8",
        "KILOPASCAL, 62 psi",
        "BRINELL, ''"
    })
    void a_figure_that_does_not_say_what_it_is_is_not_guessed(ReadingText unit, String text) {
        assertThatThrownBy(() -> unit.read(text)).isInstanceOf(RuntimeException.class);
    }
}
