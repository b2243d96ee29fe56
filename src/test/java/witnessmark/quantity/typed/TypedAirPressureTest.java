package witnessmark.quantity.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.quantity.Pressure;

class TypedAirPressureTest {
    /**
     * Factors of NIST SP 811 (2008), appendix B.8: inHg 3.386 389 kPa, mmHg 133.322 4 Pa, psi 6.894 757 kPa. A standard
     * atmosphere is 101 325 Pa, 29.921 inHg, 760 mmHg, 14.696 psi.
     */
    @ParameterizedTest(name = "{0} is {1} Pa")
    @CsvSource(
            delimiter = '|',
            value = {
                "98.2 kPa | 98200",
                "98,2 | 98200",
                "982 hPa | 98200",
                "982 mbar | 98200",
                "982 | 98200",
                "1 013.25 | 101325",
                "1013.25 mb | 101325",
                "0.982 bar | 98200",
                "0.982 | 98200",
                "29.00 inHg | 98205",
                "29.00 in Hg | 98205",
                "29 | 98205",
                "29.921 inHg | 101324",
                "760 mmHg | 101325",
                "14.24 psi | 98181",
                "14.24 | 98181",
                "14.696 psi | 101325",
                "98200 Pa | 98200",
            })
    void the_unit_is_said_or_follows_from_the_size(String text, long pascals) {
        assertThat(TypedAirPressure.read(text)).isEqualTo(new Typed.Read<>(new Pressure(pascals), text));
    }

    /** 745 hPa is the air at 2 500 m (ISO 2533), 745 mmHg that of a dull day at the sea. */
    @Test
    void what_can_be_two_airs_comes_back_with_both() {
        assertThat(TypedAirPressure.read("745")).isEqualTo(new Typed.Two<>(new Pressure(74_500), new Pressure(99_325)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "air", "3", "0", "-98", "5000", "98.2 furlongs", "1e99", "99999999999999999999999999 kPa"})
    void what_can_be_no_air_is_not_read(String text) {
        assertThat(TypedAirPressure.read(text)).isInstanceOf(Typed.Unreadable.class);
    }

    /** Round trip: what is shown in a field reads back as it is. */
    @Test
    void any_air_reads_back_from_its_text() {
        long seed = 20260520;
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            Pressure air = new Pressure(50_000 + random.nextInt(70_000));
            assertThat(TypedAirPressure.read(TypedAirPressure.text(air)).only())
                    .as("seed %d, %s", seed, air)
                    .contains(air);
        }
    }
}
