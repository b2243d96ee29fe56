package witnessmark.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Counting as values come, against the steps of the standard taken by the letter over a list; and what must always hold. */
class RainflowTest {
    private static final Comparator<Rainflow.Cycle> ORDER = Comparator.comparingDouble(Rainflow.Cycle::range)
            .thenComparingDouble(Rainflow.Cycle::mean)
            .thenComparingDouble(Rainflow.Cycle::count);

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void it_counts_what_the_steps_of_the_standard_count(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 400; trial++) {
            double[] history = history(random);

            assertThat(Rainflow.count(history))
                    .as("seed %d, trial %d: %s", seed, trial, java.util.Arrays.toString(history))
                    .usingElementComparator(ORDER)
                    .containsExactlyInAnyOrderElementsOf(byTheLetter(history));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13})
    void values_one_by_one_and_in_pieces_count_the_same(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 200; trial++) {
            double[] history = history(random);
            List<Rainflow.Cycle> pieces = new ArrayList<>();
            Rainflow rainflow =
                    new Rainflow((range, mean, count) -> pieces.add(new Rainflow.Cycle(range, mean, count)));
            for (int at = 0; at < history.length; ) {
                int to = Math.min(history.length, at + 1 + random.nextInt(7));
                if (random.nextBoolean()) {
                    rainflow.add(history, at, to);
                } else {
                    for (int i = at; i < to; i++) {
                        rainflow.add(history[i]);
                    }
                }
                at = to;
            }
            rainflow.finish();

            assertThat(pieces).as("seed %d, trial %d", seed, trial).isEqualTo(Rainflow.count(history));
        }
    }

    /** Longer than what is looked at in one go, with stretches that stay, also at the start. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {31, 32, 33, 34})
    void a_long_history_counts_the_same_however_it_is_cut(long seed) {
        Random random = new Random(seed);
        double[] history = new double[5000];
        double value = 7;
        for (int i = 100; i < history.length; i++) {
            value = random.nextInt(4) == 0 ? value : value + random.nextInt(41) - 20;
            history[i] = value;
        }
        java.util.Arrays.fill(history, 0, 100, 7);
        List<Rainflow.Cycle> whole = Rainflow.count(history);

        assertThat(whole).usingElementComparator(ORDER).containsExactlyInAnyOrderElementsOf(byTheLetter(history));
        for (int piece : new int[] {1, 2, 99, 100, 101, 1023, 1024, 1025, 4999}) {
            List<Rainflow.Cycle> cut = new ArrayList<>();
            Rainflow rainflow = new Rainflow((range, mean, count) -> cut.add(new Rainflow.Cycle(range, mean, count)));
            for (int at = 0; at < history.length; at += piece) {
                rainflow.add(history, at, Math.min(history.length, at + piece));
            }
            rainflow.finish();
            assertThat(cut).as("seed %d, pieces of %d", seed, piece).isEqualTo(whole);
        }
    }

    @Test
    void what_stands_before_a_value_that_is_no_number_is_counted() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            List<Double> ranges = new ArrayList<>();
            Rainflow rainflow = new Rainflow((range, mean, count) -> ranges.add(range));
            assertThatThrownBy(() -> rainflow.add(new double[] {0, 2, 1, bad, 9}, 0, 5))
                    .isInstanceOf(IllegalArgumentException.class);
            rainflow.add(new double[] {3}, 0, 1);
            rainflow.finish();

            assertThat(ranges).containsExactly(1.0, 3.0);
        }
    }

    /** Every step between reversals belongs to one counted half: twice the sum of count times range is the way gone. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23})
    void the_ranges_add_up_to_the_way_gone_and_the_widest_is_there(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 200; trial++) {
            double[] history = history(random);
            List<Rainflow.Cycle> cycles = Rainflow.count(history);
            double way = 0;
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < history.length; i++) {
                way += i == 0 ? 0 : Math.abs(history[i] - history[i - 1]);
                low = Math.min(low, history[i]);
                high = Math.max(high, history[i]);
            }

            assertThat(cycles.stream()
                            .mapToDouble(each -> 2 * each.count() * each.range())
                            .sum())
                    .isCloseTo(way, within(1e-9 * Math.max(1, way)));
            assertThat(cycles.stream().mapToDouble(Rainflow.Cycle::range).max().orElse(0))
                    .isEqualTo(history.length == 0 ? 0 : high - low);
        }
    }

    @Test
    void what_is_no_number_is_told_and_what_came_before_stands() {
        List<Double> ranges = new ArrayList<>();
        Rainflow rainflow = new Rainflow((range, mean, count) -> ranges.add(range));
        rainflow.add(0);
        rainflow.add(3);

        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> rainflow.add(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> rainflow.add(new double[] {bad}, 0, 1))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        rainflow.add(1);
        rainflow.finish();

        assertThat(ranges).containsExactly(3.0, 2.0);
        assertThatThrownBy(() -> rainflow.add(2)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(rainflow::finish).isInstanceOf(IllegalStateException.class);
    }

    /** Whole numbers, so that ranges tie and values repeat; some histories only grow, swing ever wider or ever less. */
    private static double[] history(Random random) {
        double[] history = new double[random.nextInt(60)];
        int way = random.nextInt(4);
        for (int i = 0; i < history.length; i++) {
            double wide = switch (way) {
                case 0 -> 8;
                case 1 -> 1 + i;
                case 2 -> 61 - i;
                default -> 1000;
            };
            history[i] = way == 0 || way == 3
                    ? random.nextInt((int) wide) - wide / 2
                    : (i % 2 == 0 ? wide : -wide) + random.nextInt(2);
        }
        return history;
    }

    /** ASTM E1049-85, 5.4.4, steps 1 to 6 over the list of all reversals. */
    private static List<Rainflow.Cycle> byTheLetter(double[] history) {
        List<Double> reversals = new ArrayList<>();
        for (double value : history) {
            int last = reversals.size() - 1;
            if (last >= 0 && reversals.get(last) == value) {
                continue;
            }
            if (last >= 1 && (reversals.get(last) - reversals.get(last - 1)) * (value - reversals.get(last)) > 0) {
                reversals.set(last, value);
            } else {
                reversals.add(value);
            }
        }
        List<Rainflow.Cycle> cycles = new ArrayList<>();
        List<Double> points = new ArrayList<>();
        for (double reversal : reversals) { // step 1
            points.add(reversal);
            while (points.size() >= 3) { // step 2
                int n = points.size();
                double x = Math.abs(points.get(n - 1) - points.get(n - 2));
                double y = Math.abs(points.get(n - 2) - points.get(n - 3));
                if (x < y) { // step 3
                    break;
                }
                boolean start = n == 3;
                cycles.add(new Rainflow.Cycle(y, (points.get(n - 2) + points.get(n - 3)) / 2, start ? 0.5 : 1));
                points.remove(n - 3);
                if (!start) { // step 4; step 5 leaves the later point as the new start
                    points.remove(n - 3);
                }
            }
        }
        for (int i = 1; i < points.size(); i++) { // step 6
            cycles.add(new Rainflow.Cycle(
                    Math.abs(points.get(i) - points.get(i - 1)), (points.get(i) + points.get(i - 1)) / 2, 0.5));
        }
        return cycles;
    }
}
