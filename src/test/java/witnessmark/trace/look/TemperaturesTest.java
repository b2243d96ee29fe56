package witnessmark.trace.look;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.result.ThermalRanges;
import witnessmark.trace.result.ThermalRanges.Band;

/** Against the history of figure 6 of ASTM E1049-85, ten degrees to each of its units. */
class TemperaturesTest {
    private static final double[] HISTORY = {-20, 10, -30, 50, -10, 30, -40, 40, -20};

    @Test
    void the_ranges_of_the_standard_are_found() {
        ThermalRanges ranges = Temperatures.ranges(ChannelKind.WATER_TEMPERATURE, HISTORY, 2);
        // the standard: 3 half, 4 one and a half, 6 half, 8 one, 9 half
        assertThat(ranges.bands())
                .containsExactly(
                        new Band(30, 0.5), new Band(40, 1.5), new Band(60, 0.5), new Band(80, 1), new Band(90, 0.5));
        assertThat(ranges.largest()).isEqualTo(90);
    }

    @Test
    void small_ranges_and_holes_are_left_out() {
        double[] holes = new double[2 * HISTORY.length];
        for (int i = 0; i < HISTORY.length; i++) {
            holes[2 * i] = HISTORY[i];
            holes[2 * i + 1] = Double.NaN;
        }
        assertThat(Temperatures.ranges(ChannelKind.WATER_TEMPERATURE, holes, 45).bands())
                .containsExactly(new Band(60, 0.5), new Band(80, 1), new Band(90, 0.5));
        assertThat(Temperatures.ranges(ChannelKind.WATER_TEMPERATURE, new double[] {80, 80.5, 80}, 2)
                        .bands())
                .isEmpty();
    }
}
