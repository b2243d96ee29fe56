package witnessmark.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The minimum zone against a solver that knows nothing of contact points: the distance of two parallel planes about a
 * face is convex in both their slopes (a greatest of planes less a least of planes), so that a search along one slope
 * within a search along the other finds its least (golden section; Press et al., Numerical Recipes, 10.2).
 */
class MinimumZoneTest {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int STEPS = 90;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {101, 102, 103, 104, 105, 106, 107, 108, 109, 110, 111, 112})
    void the_least_distance_of_planes_is_what_a_search_over_their_slopes_finds(long seed) {
        Random random = new Random(seed);
        int count = 4 + random.nextInt(22);
        List<SurfacePoint> face = new ArrayList<>();
        double bow = random.nextGaussian() * 0.05;
        double twist = random.nextGaussian() * 0.03;
        for (int i = 0; i < count; i++) {
            double x = random.nextDouble() * 2 - 1;
            double y = random.nextDouble() * 2 - 1;
            double z = bow * x * x + twist * x * y + random.nextGaussian() * 0.01;
            face.add(new SurfacePoint(x, y, Math.rint(z * 1000) / 1000)); // as read off a dial
        }
        double found = least(b -> least(c -> range(face, b, c)));
        assertThat(Flatness.minimumZone(face)).isCloseTo(found, within(1e-7));
    }

    /** What a dial gives on a real grid repeats itself: many readings alike, many on one line. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {201, 202, 203, 204})
    void a_regular_grid_of_readings_that_repeat(long seed) {
        Random random = new Random(seed);
        List<SurfacePoint> face = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 4; j++) {
                face.add(new SurfacePoint(i / 4.0, j / 3.0, random.nextInt(5) / 100.0));
            }
        }
        double found = least(b -> least(c -> range(face, b, c)));
        assertThat(Flatness.minimumZone(face)).isCloseTo(found, within(1e-7));
    }

    private static double least(DoubleUnaryOperator convex) {
        double from = -2;
        double to = 2;
        for (int i = 0; i < STEPS; i++) {
            double left = to - GOLDEN * (to - from);
            double right = from + GOLDEN * (to - from);
            if (convex.applyAsDouble(left) <= convex.applyAsDouble(right)) {
                to = right;
            } else {
                from = left;
            }
        }
        return convex.applyAsDouble((from + to) / 2);
    }

    private static double range(List<SurfacePoint> face, double b, double c) {
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (SurfacePoint p : face) {
            double off = p.z() - b * p.x() - c * p.y();
            high = Math.max(high, off);
            low = Math.min(low, off);
        }
        return high - low;
    }
}
