package witnessmark.statistics;

import java.util.Arrays;

/** The middle of numbers: half lie above it, half below. */
public final class Medians {
    private Medians() {}

    /**
     * The middle number, or the mean of the two middle ones.
     *
     * @throws IllegalArgumentException if there are none, or one is no number
     */
    public static double of(double... numbers) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        if (sorted.length == 0 || Double.isNaN(sorted[sorted.length - 1])) {
            throw new IllegalArgumentException("there is no middle of " + Arrays.toString(numbers));
        }
        return ofSorted(sorted);
    }

    static double ofSorted(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : sorted[half - 1] / 2 + sorted[half] / 2;
    }
}
