package witnessmark.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Two rows of numbers that belong together, one by one. */
final class Pairs {
    private Pairs() {}

    /**
     * @throws IllegalArgumentException if the rows differ in length, hold fewer pairs than that, or something that is no
     *     finite number
     */
    static void check(double[] x, double[] y, int fewest) {
        if (x.length != y.length || x.length < fewest) {
            throw new IllegalArgumentException(
                    x.length + " and " + y.length + " numbers; no fewer than " + fewest + " pairs will do");
        }
        if (!IntStream.range(0, x.length).allMatch(i -> Double.isFinite(x[i]) && Double.isFinite(y[i]))) {
            throw new IllegalArgumentException("not all are finite numbers");
        }
    }

    /** How often each number that comes more than once comes. */
    static int[] ties(double[] numbers) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        int[] ties = new int[sorted.length / 2];
        int found = 0;
        for (int from = 0; from < sorted.length; ) {
            int to = from;
            while (to < sorted.length && sorted[to] == sorted[from]) {
                to++;
            }
            if (to - from > 1) {
                ties[found++] = to - from;
            }
            from = to;
        }
        return Arrays.copyOf(ties, found);
    }
}
