package witnessmark.statistics;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A straight line by least squares, {@code y = intercept + slope·x}, with what it leaves uncertain where the deviations are
 * alike and normal (N. R. Draper and H. Smith, Applied Regression Analysis, chapter 1).
 *
 * @param n how many points
 * @param slope of the line
 * @param intercept of the line
 * @param slopeError standard error of the slope
 * @param interceptError standard error of the intercept
 * @param residual standard deviation of the points about the line, over n − 2
 * @param rSquared the share of the spread of y that the line explains, 0 to 1; 1 where y does not spread
 * @param middle the mean of x
 * @param spread the sum of the squares of x about its mean
 */
public record StraightLine(
        int n,
        double slope,
        double intercept,
        double slopeError,
        double interceptError,
        double residual,
        double rSquared,
        double middle,
        double spread) {
    /** Two points leave nothing to judge the line by. */
    public static final int FEWEST = 3;

    /**
     * @throws IllegalArgumentException for fewer than three points, what is no finite number, or points all at the same place
     */
    public static StraightLine of(double[] x, double[] y) {
        Pairs.check(x, y, FEWEST);
        int n = x.length;
        double meanX = mean(x);
        double meanY = mean(y);
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = 0; i < n; i++) {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
            yy += (y[i] - meanY) * (y[i] - meanY);
        }
        if (!(xx > 0)) {
            throw new IllegalArgumentException("points at one place have no slope");
        }
        double slope = xy / xx;
        double left = 0;
        for (int i = 0; i < n; i++) {
            double off = (y[i] - meanY) - slope * (x[i] - meanX);
            left += off * off;
        }
        double residual = Math.sqrt(left / (n - 2));
        return new StraightLine(
                n,
                slope,
                meanY - slope * meanX,
                residual / Math.sqrt(xx),
                residual * Math.sqrt(1.0 / n + meanX * meanX / xx),
                residual,
                yy > 0 ? 1 - left / yy : 1,
                meanX,
                xx);
    }

    public double at(double x) {
        return intercept + slope * x;
    }

    /** By how much the line itself may lie to either side there, as often as the level says. */
    public double confidence(double x, double level) {
        return student(level) * residual * Math.sqrt(1.0 / n + away(x));
    }

    /** By how much a further point may lie to either side of the line there, as often as the level says. */
    public double prediction(double x, double level) {
        return student(level) * residual * Math.sqrt(1 + 1.0 / n + away(x));
    }

    /** By how much the slope may be off to either side, as often as the level says. */
    public double slopeWithin(double level) {
        return student(level) * slopeError;
    }

    private double away(double x) {
        return (x - middle) * (x - middle) / spread;
    }

    private double student(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("no level: " + level);
        }
        return new TDistribution(n - 2.0).inverseCumulativeProbability((1 + level) / 2);
    }

    private static double mean(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        double rough = sum / numbers.length;
        double left = 0;
        for (double number : numbers) {
            left += number - rough; // what rounding lost
        }
        return rough + left / numbers.length;
    }
}
