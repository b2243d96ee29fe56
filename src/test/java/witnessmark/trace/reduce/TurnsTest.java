package witnessmark.trace.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import witnessmark.trace.result.TurningPoints;

class TurnsTest {
    private static TurningPoints turns(double least, double... values) {
        Turns turns = new Turns(least);
        for (double value : values) {
            turns.add(value);
        }
        return turns.found();
    }

    @Test
    void values_between_turning_points_are_left_out() {
        // ASTM E1049-85 (2017), figure 6, plain and with values added between its reversals.
        List<Double> figure = List.of(-2.0, 1.0, -3.0, 5.0, -1.0, 3.0, -4.0, 4.0, -2.0);
        assertThat(turns(0.5, -2, 1, -3, 5, -1, 3, -4, 4, -2).values()).isEqualTo(figure);
        assertThat(turns(0.5, -2, -0.5, 1, 0, -1.5, -3, -1, 2.5, 5, 2, -1, 1, 3, 0, -4, 0, 4, 1, -2)
                        .values())
                .isEqualTo(figure);
        assertThat(turns(0.5, 7, 7, 7).values()).containsExactly(7.0);
        assertThat(turns(0.5).values()).isEmpty();
    }

    @Test
    void points_turn_each_time_and_by_as_much_as_asked_and_nothing_larger_is_lost() {
        for (long seed = 1; seed <= 60; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] values = new double[2000];
            double at = 60;
            for (int i = 0; i < values.length; i++) {
                at += random.nextDouble(-1.5, 1.5);
                values[i] = at;
            }
            List<Double> points = turns(2, values).values();
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
            assertThat(points).as("seed " + seed).contains(low, high);
            for (int i = 1; i < points.size() - 1; i++) {
                boolean up = points.get(i) > points.get(i - 1);
                assertThat(points.get(i + 1) > points.get(i))
                        .as("seed %d, point %d", seed, i)
                        .isNotEqualTo(up);
                if (i + 1 < points.size() - 1 && i > 1) {
                    assertThat(Math.abs(points.get(i + 1) - points.get(i))).isGreaterThanOrEqualTo(2);
                }
            }
        }
    }

    @Test
    void there_are_never_more_points_than_fit() {
        Turns turns = new Turns(2);
        for (int i = 0; i < 1_000_000; i++) {
            turns.add(i % 2 == 0 ? 60 : 63 + i % 50);
        }
        TurningPoints found = turns.found();
        assertThat(found.values()).hasSizeLessThan(4200);
        assertThat(found.least()).isGreaterThan(2);
    }
}
