package witnessmark.statistics;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.special.Gamma;

/**
 * Whether one group lives longer than another (N. Mantel 1966, R. Peto and J. Peto 1972): at every age at which something failed,
 * failures of a group are held against those it had to expect by its share of what was still watched. Lives may be watched from an
 * age on and end without a failure.
 *
 * @param observed failures of the first group
 * @param expected failures the first group had to expect were both alike
 * @param variance of the difference
 * @param chiSquare the difference squared over its variance, of one degree of freedom; 0 where the variance is 0
 * @param p the chance of as great a difference were both alike
 * @param failures of both groups together
 * @param room how far the expected failures of the first group lie from the least and the most there could have been, whichever
 *     is nearer (N. Mantel and J. L. Fleiss 1980, American Journal of Epidemiology 112)
 */
public record LogRank(
        int observed, double expected, double variance, double chiSquare, double p, int failures, double room) {
    /** With less room the chi-square distribution does not fit, and the chance says nothing (Mantel and Fleiss 1980). */
    public static final int LEAST_ROOM = 5;

    /**
     * One life.
     *
     * @param entry the age from which it was watched, 0 or more
     * @param exit the age at which it failed or was last seen, above the entry
     * @param failed whether it failed
     */
    public record Life(double entry, double exit, boolean failed) {
        public Life {
            if (!(entry >= 0 && exit > entry) || Double.isInfinite(exit)) {
                throw new IllegalArgumentException("a life ends after it begins to be watched");
            }
        }
    }

    /** @throws IllegalArgumentException if a group is empty */
    public static LogRank of(List<Life> first, List<Life> second) {
        Life[] one = all(first);
        Life[] other = all(second);
        double[] ages = Arrays.stream(new Life[][] {one, other})
                .flatMap(Arrays::stream)
                .filter(Life::failed)
                .mapToDouble(Life::exit)
                .distinct()
                .sorted()
                .toArray();
        int observed = 0;
        int failures = 0;
        double expected = 0;
        double variance = 0;
        double least = 0;
        double most = 0;
        for (double age : ages) {
            double atRisk = atRisk(one, age);
            double both = atRisk + atRisk(other, age);
            int failed = failed(one, age);
            int failedBoth = failed + failed(other, age);
            observed += failed;
            failures += failedBoth;
            double share = atRisk / both;
            expected += failedBoth * share;
            least += Math.max(0, failedBoth - (both - atRisk));
            most += Math.min(failedBoth, atRisk);
            if (both > 1) {
                variance += failedBoth * share * (1 - share) * (both - failedBoth) / (both - 1);
            }
        }
        double difference = observed - expected;
        double chiSquare = variance > 0 ? difference * difference / variance : 0;
        double p = chiSquare > 0 ? Gamma.regularizedGammaQ(0.5, chiSquare / 2) : 1;
        double room = Math.min(expected - least, most - expected);
        return new LogRank(observed, expected, variance, chiSquare, p, failures, room);
    }

    /** Whether enough failed for the chance to say anything. */
    public boolean enough() {
        return room >= LEAST_ROOM;
    }

    private static Life[] all(List<Life> group) {
        if (group.isEmpty()) {
            throw new IllegalArgumentException("a group has lives");
        }
        return group.toArray(new Life[0]);
    }

    private static int atRisk(Life[] lives, double age) {
        int count = 0;
        for (Life life : lives) {
            count += life.entry() < age && life.exit() >= age ? 1 : 0;
        }
        return count;
    }

    private static int failed(Life[] lives, double age) {
        int count = 0;
        for (Life life : lives) {
            count += life.failed() && life.exit() == age ? 1 : 0;
        }
        return count;
    }
}
