package witnessmark.statistics;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How well something repeats: the standard deviation within groups that each were made under the same conditions, pooled
 * over the groups (ISO 5725-2, 7.4; NIST/SEMATECH e-Handbook 1.3.5.3).
 *
 * @param deviation the pooled standard deviation, 0 or more
 * @param freedom degrees of freedom, 1 or more
 */
public record Repeated(double deviation, int freedom) {
    /**
     * From repeats.
     *
     * @param groups of finite figures; a group of one says nothing and is passed over
     * @throws IllegalArgumentException if no group has two figures
     */
    public static Repeated within(List<double[]> groups) {
        double squares = 0;
        int freedom = 0;
        for (double[] group : groups) {
            if (group.length > 1) {
                squares += squares(group);
                freedom += group.length - 1;
            }
        }
        if (freedom == 0) {
            throw new IllegalArgumentException("nothing was repeated");
        }
        return new Repeated(Math.sqrt(squares / freedom), freedom);
    }

    /** Of the deviations from the mean of a group. */
    private static double squares(double[] group) {
        double sum = 0;
        for (double figure : group) {
            sum += figure;
        }
        double mean = sum / group.length;
        double squares = 0;
        for (double figure : group) {
            squares += (figure - mean) * (figure - mean);
        }
        return squares;
    }

    /**
     * By how much the means of so many figures of one kind and so many of another may differ by chance: half the width of
     * the interval around their difference, by Student's t.
     *
     * @param confidence above 0, below 1
     */
    public double ofDifference(int one, int other, double confidence) {
        double t = new TDistribution(freedom).inverseCumulativeProbability((1 + confidence) / 2);
        return t * deviation * Math.sqrt(1.0 / one + 1.0 / other);
    }
}
