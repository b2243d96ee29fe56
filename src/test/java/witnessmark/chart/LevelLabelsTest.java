package witnessmark.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Labels of lines that lie close together, in charts of any height: none lies over another while there is room. */
class LevelLabelsTest {
    @Test
    void none_lies_over_another_and_each_touches_its_own_line() {
        for (long seed = 1; seed <= 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Rectangle2D values = new Rectangle2D.Double(40, 10, 500, 36 + random.nextInt(200));
            int count = 1 + random.nextInt(4);
            double[] at = random.doubles(count, values.getY(), values.getMaxY())
                    .sorted()
                    .toArray();
            double[] wide = random.doubles(count, 40, 110).toArray();
            List<Rectangle2D> places = LevelLabels.placed(at, wide, 14, 1, values);
            for (int i = 0; i < count; i++) {
                Rectangle2D one = places.get(i);
                assertThat(values.contains(one)).as("seed %d: inside", seed).isTrue();
                assertThat(Math.min(Math.abs(at[i] - one.getMaxY()), Math.abs(one.getY() - at[i])))
                        .as("seed %d: at its line", seed)
                        .isLessThanOrEqualTo(3.0 + 1e-9);
                for (int j = 0; j < i; j++) {
                    assertThat(one.intersects(places.get(j)))
                            .as("seed %d: %d over %d", seed, i, j)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void two_limits_that_nearly_meet_stand_beside_each_other_or_on_two_sides() {
        Rectangle2D low = new Rectangle2D.Double(0, 0, 400, 60);
        List<Rectangle2D> places = LevelLabels.placed(new double[] {30, 32}, new double[] {90, 90}, 14, 1, low);
        assertThat(places.get(0).intersects(places.get(1))).isFalse();
    }
}
