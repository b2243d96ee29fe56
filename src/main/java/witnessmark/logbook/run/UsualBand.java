package witnessmark.logbook.run;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a reading usually is on one engine: the middle spread of its last runs, with Tukey's fences at one and a half
 * times the spread beyond the quartiles (J. W. Tukey, Exploratory Data Analysis, 1977, section 2D; quartiles by linear
 * interpolation, type 7 of Hyndman and Fan, The American Statistician 50, 1996).
 *
 * @param low first quartile
 * @param high third quartile
 * @param lowFence below this a reading is queried
 * @param highFence above this a reading is queried
 */
public record UsualBand(long low, long high, long lowFence, long highFence) {
    /** Fewer runs than this say nothing about what is usual. */
    static final int LEAST_RUNS = 5;

    private static final double FENCE = 1.5;

    /**
     * @param values what the last runs read, in any order
     * @param leastSpread a spread below which differences are the instrument's, in the same unit
     * @return the band, or empty when there are too few runs
     */
    public static Optional<UsualBand> of(List<Long> values, long leastSpread) {
        if (values.size() < LEAST_RUNS) {
            return Optional.empty();
        }
        long[] sorted = values.stream().mapToLong(Long::longValue).toArray();
        Arrays.sort(sorted);
        double low = quantile(sorted, 0.25);
        double high = quantile(sorted, 0.75);
        double reach = FENCE * Math.max(high - low, leastSpread);
        return Optional.of(new UsualBand(
                Math.round(low), Math.round(high), (long) Math.floor(low - reach), (long) Math.ceil(high + reach)));
    }

    public boolean holds(long value) {
        return lowFence <= value && value <= highFence;
    }

    private static double quantile(long[] sorted, double p) {
        double at = p * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
