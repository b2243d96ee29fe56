package witnessmark.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of trends and lines whatever the numbers; chances against all orders of few numbers. */
class TrendPropertiesTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void shifting_and_scaling_changes_nothing_but_the_line(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 100; trial++) {
            Sample s = Sample.of(random, 3 + random.nextInt(9));
            double[] x = map(s.x, v -> 3 * v + 40);
            double[] y = map(s.y, v -> 2 * v - 7);
            MannKendall trend = MannKendall.of(s.x, s.y);

            assertThat(MannKendall.of(x, y)).as("seed %d", seed).isEqualTo(trend);
            TheilSen line = TheilSen.of(s.x, s.y);
            TheilSen moved = TheilSen.of(x, y);
            assertThat(moved.slope()).isCloseTo(line.slope() * 2 / 3, within(1e-9));
            assertThat(moved.at(3 * 5 + 40)).isCloseTo(2 * line.at(5) - 7, within(1e-9));
            MannKendall down = MannKendall.of(s.x, map(s.y, v -> -v));
            assertThat(down.score()).isEqualTo(-trend.score());
            assertThat(down.p()).isEqualTo(trend.p());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {4, 5})
    void the_order_in_which_they_come_does_not_matter(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 100; trial++) {
            Sample s = Sample.of(random, 8);
            int[] order = IntStream.range(0, 8).toArray();
            for (int i = 7; i > 0; i--) {
                int j = random.nextInt(i + 1);
                int kept = order[i];
                order[i] = order[j];
                order[j] = kept;
            }
            double[] x = IntStream.of(order).mapToDouble(i -> s.x[i]).toArray();
            double[] y = IntStream.of(order).mapToDouble(i -> s.y[i]).toArray();

            assertThat(MannKendall.of(x, y)).isEqualTo(MannKendall.of(s.x, s.y));
            assertThat(TheilSen.of(x, y).slope())
                    .isCloseTo(TheilSen.of(s.x, s.y).slope(), within(1e-12));
        }
    }

    /** All 720 orders of six numbers, one by one. */
    @Test
    void an_exact_chance_is_the_share_of_all_orders() {
        List<double[]> orders = new ArrayList<>();
        permute(new double[] {1, 2, 3, 4, 5, 6}, 0, orders);
        double[] x = {1, 2, 3, 4, 5, 6};
        for (int i = 0; i < orders.size(); i += 37) {
            MannKendall trend = MannKendall.of(x, orders.get(i));
            long asFar = orders.stream()
                    .filter(order -> Math.abs(MannKendall.of(x, order).score()) >= Math.abs(trend.score()))
                    .count();

            assertThat(trend.p()).isCloseTo(Math.min(1, asFar / 720.0), within(1e-12));
        }
    }

    /** The definition of the interval: a slope is in it as long as what it leaves shows no trend at that level. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {6, 7, 8})
    void the_interval_holds_the_slopes_that_leave_no_trend(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 60; trial++) {
            Sample s = Sample.of(random, 4 + random.nextInt(8));
            Optional<TheilSen.Interval> interval = TheilSen.of(s.x, s.y).interval(0.9);

            assertThat(interval).isPresent();
            double lower = interval.orElseThrow().lower();
            double upper = interval.orElseThrow().upper();
            double step = 1e-6 * Math.max(1, Math.abs(upper - lower));
            assertThat(left(s, lower - step).p()).isLessThanOrEqualTo(0.1 + 1e-12);
            assertThat(left(s, upper + step).p()).isLessThanOrEqualTo(0.1 + 1e-12);
            assertThat(left(s, lower + step).p()).isGreaterThan(0.1);
            assertThat(left(s, upper - step).p()).isGreaterThan(0.1);
        }
    }

    private static MannKendall left(Sample s, double slope) {
        double[] left = IntStream.range(0, s.x.length)
                .mapToDouble(i -> s.y[i] - slope * s.x[i])
                .toArray();
        return MannKendall.of(s.x, left);
    }

    @Test
    void three_readings_have_no_interval_and_four_have_the_widest() {
        double[] y = {1, 2, 4, 3};
        assertThat(TheilSen.of(new double[] {1, 2, 3}, new double[] {1, 2, 4}).interval(0.9))
                .isEmpty();
        assertThat(TheilSen.of(new double[] {1, 2, 3, 4}, y).interval(0.9)).contains(new TheilSen.Interval(-1, 2));
    }

    @Test
    void one_wild_figure_does_not_turn_the_line() {
        double[] x = {0, 1, 2, 3, 4, 5, 6};
        double[] y = {0, 1, 2, 300, 4, 5, 6};

        assertThat(TheilSen.of(x, y).slope()).isEqualTo(1);
        assertThat(TheilSen.of(x, y).at(6)).isEqualTo(6);
    }

    @Test
    void what_all_ties_has_no_trend() {
        MannKendall level = MannKendall.of(new double[] {1, 2, 3, 4}, new double[] {5, 5, 5, 5});

        assertThat(level.score()).isZero();
        assertThat(level.p()).isEqualTo(1);
        assertThat(level.tau()).isZero();
        assertThat(TheilSen.of(new double[] {1, 2, 3, 4}, new double[] {5, 5, 5, 5})
                        .slope())
                .isZero();
    }

    /** Readings at the same hours say nothing of a trend, whichever is written first. */
    @Test
    void what_was_found_at_the_same_time_is_not_compared() {
        assertThat(MannKendall.of(new double[] {1, 1}, new double[] {3, 9}).score())
                .isZero();
        assertThatThrownBy(() -> TheilSen.of(new double[] {1, 1}, new double[] {3, 9}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {9, 10})
    void least_squares_is_what_the_library_says(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 100; trial++) {
            Sample s = Sample.of(random, 3 + random.nextInt(20));
            SimpleRegression theirs = new SimpleRegression();
            for (int i = 0; i < s.x.length; i++) {
                theirs.addData(s.x[i], s.y[i]);
            }
            StraightLine ours = StraightLine.of(s.x, s.y);

            assertThat(ours.slope()).isCloseTo(theirs.getSlope(), within(1e-9));
            assertThat(ours.intercept()).isCloseTo(theirs.getIntercept(), within(1e-7));
            assertThat(ours.slopeError()).isCloseTo(theirs.getSlopeStdErr(), within(1e-9));
            assertThat(ours.interceptError()).isCloseTo(theirs.getInterceptStdErr(), within(1e-7));
            assertThat(ours.slopeWithin(0.95))
                    .isCloseTo(theirs.getSlopeConfidenceInterval(0.05), within(1e-7 * ours.slopeWithin(0.95)));
            assertThat(ours.rSquared()).isCloseTo(theirs.getRSquare(), within(1e-9));
        }
    }

    @Test
    void what_cannot_be_compared_is_told() {
        double[] one = {1};
        double[] two = {1, 2};
        double[] gap = {1, Double.NaN};
        assertThatThrownBy(() -> MannKendall.of(one, one)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MannKendall.of(one, two)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MannKendall.of(two, gap)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StraightLine.of(two, two)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TheilSen.of(two, two).interval(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Medians.of()).isInstanceOf(IllegalArgumentException.class);
    }

    private static void permute(double[] numbers, int from, List<double[]> into) {
        if (from == numbers.length) {
            into.add(numbers.clone());
            return;
        }
        for (int i = from; i < numbers.length; i++) {
            swap(numbers, from, i);
            permute(numbers, from + 1, into);
            swap(numbers, from, i);
        }
    }

    private static void swap(double[] numbers, int i, int j) {
        double kept = numbers[i];
        numbers[i] = numbers[j];
        numbers[j] = kept;
    }

    private static double[] map(double[] from, java.util.function.DoubleUnaryOperator change) {
        return java.util.Arrays.stream(from).map(change).toArray();
    }

    /** Numbers of which none comes twice. */
    private record Sample(double[] x, double[] y) {
        static Sample of(Random random, int n) {
            double[] x =
                    random.ints(0, 2000).distinct().limit(n).asDoubleStream().toArray();
            double[] y =
                    random.ints(0, 2000).distinct().limit(n).asDoubleStream().toArray();
            return new Sample(x, y);
        }
    }
}
