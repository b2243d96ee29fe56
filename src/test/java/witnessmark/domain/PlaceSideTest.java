package witnessmark.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which side the words of a spot begin with, and where on a part a mark can be. */
class PlaceSideTest {
    @ParameterizedTest
    @CsvSource({
        "upper, UPPER, ''",
        "'Upper, near the tang', UPPER, ', near the tang'",
        "lower half, LOWER, half",
        "inlet/rear, INLET, /rear",
        "EXHAUST, EXHAUST, ''",
        "uppermost ring, WHOLE, uppermost ring",
        "near the upper edge, WHOLE, near the upper edge",
        "'', WHOLE, ''"
    })
    void a_spot_begins_with_a_side_as_a_word_of_its_own(String spot, PlaceSide side, String beyond) {
        assertThat(PlaceSide.of(spot)).isEqualTo(side);
        assertThat(side.beyond(spot)).isEqualTo(beyond);
    }

    @ParameterizedTest
    @CsvSource({"UPPER, near the tang, upper near the tang", "WHOLE, near the tang, near the tang", "INLET, '', inlet"})
    void a_side_is_put_before_what_lies_beyond_it(PlaceSide side, String beyond, String spot) {
        assertThat(side.spot(beyond)).isEqualTo(spot);
        assertThat(PlaceSide.of(spot)).isEqualTo(side);
        assertThat(side.beyond(spot)).isEqualTo(beyond);
    }

    @ParameterizedTest
    @CsvSource({"-1, 50", "360, 50", "0, -1", "0, 101"})
    void a_place_beyond_its_part_is_none(int around, int out) {
        assertThatThrownBy(() -> new PartSpot(around, out)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "359, 100"})
    void its_edges_are_on_it(int around, int out) {
        assertThat(new PartSpot(around, out).out()).isEqualTo(out);
    }
}
