package witnessmark.statistics;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A straight line that a few odd points do not turn: its slope is the middle of the slopes of all pairs, and as many points
 * lie above it as below (H. Theil 1950; P. K. Sen 1968). The interval of the slope is Sen's: those slopes that
 * {@link MannKendall} would not tell from no trend in what is left (M. Hollander and D. A. Wolfe, Nonparametric Statistical
 * Methods, 9.3), counted over all orders where nothing ties, else by the normal curve.
 */
public final class TheilSen {
    /** Fewer have no slope. */
    public static final int FEWEST = 2;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final double[] x;
    private final double[] y;
    private final double[] slopes;
    private final double slope;

    private TheilSen(double[] x, double[] y, double[] slopes) {
        this.x = x;
        this.y = y;
        this.slopes = slopes;
        this.slope = Medians.ofSorted(slopes);
    }

    /** A slope from lower to upper. */
    public record Interval(double lower, double upper) {
        /** Whether it may as well be level. */
        public boolean holdsZero() {
            return lower <= 0 && upper >= 0;
        }
    }

    /**
     * @throws IllegalArgumentException for fewer than two points, what is no finite number, or points all at the same place
     */
    public static TheilSen of(double[] x, double[] y) {
        Pairs.check(x, y, FEWEST);
        int n = x.length;
        double[] slopes = new double[n * (n - 1) / 2];
        int found = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (x[i] != x[j]) {
                    slopes[found++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        if (found == 0) {
            throw new IllegalArgumentException("points at one place have no slope");
        }
        double[] sorted = Arrays.copyOf(slopes, found);
        Arrays.sort(sorted);
        return new TheilSen(x.clone(), y.clone(), sorted);
    }

    public double slope() {
        return slope;
    }

    /** Where the line is at 0. */
    public double intercept() {
        return intercept(slope);
    }

    /** Where a line of another slope through the middle of the points is at 0: the middle of {@code y − slope·x}. */
    public double intercept(double otherSlope) {
        double[] left = new double[x.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = y[i] - otherSlope * x[i];
        }
        return Medians.of(left);
    }

    public double at(double place) {
        return intercept() + slope * place;
    }

    /**
     * Where the slope lies as often as that, or more often; empty where the points are too few to say.
     *
     * @param level above 0, below 1
     */
    public Optional<Interval> interval(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("no level: " + level);
        }
        int[] tiedAt = Pairs.ties(x);
        int[] tied = Pairs.ties(y);
        double within;
        if (tiedAt.length == 0 && tied.length == 0 && x.length <= KendallScores.MOST) {
            within = KendallScores.of(x.length).rarerThan((1 - level) / 2) - 2.0;
        } else {
            double variance = MannKendall.variance(x.length, tiedAt, tied);
            within = NORMAL.inverseCumulativeProbability((1 + level) / 2) * Math.sqrt(variance);
        }
        int left = (int) Math.floor((slopes.length - within) / 2); // so many slopes lie beyond at either end
        return left < 1 ? Optional.empty() : Optional.of(new Interval(slopes[left - 1], slopes[slopes.length - left]));
    }
}
