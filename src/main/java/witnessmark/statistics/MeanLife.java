package witnessmark.statistics;

import org.hipparchus.distribution.continuous.GammaDistribution;

/**
 * Mean time between failures while failures come at an even rate, with what is known of it. Bounds by chi-square: from below
 * {@code 2T / χ²(1 − a; 2r + 2)}, from above {@code 2T / χ²(a; 2r)} where counting ends at a time; where it ends with the last
 * failure both go by {@code 2r} (NIST/SEMATECH e-Handbook of Statistical Methods 8.4.5.1; MIL-HDBK-338B 8.3.2.5.2). With no
 * failure there is only a bound from below.
 *
 * @param running the running of all together, T, in any unit, above 0
 * @param failures r, 0 or more
 * @param ends whether counting ended at a time or with the last failure
 */
public record MeanLife(double running, int failures, Ends ends) {
    /** What ended the counting. */
    public enum Ends {
        AT_A_TIME,
        WITH_A_FAILURE
    }

    /**
     * @throws IllegalArgumentException for no running, fewer than no failures, or an end with a failure where none was
     */
    public MeanLife {
        if (!(running > 0) || Double.isInfinite(running) || failures < 0) {
            throw new IllegalArgumentException("running is above 0 and failures are 0 or more");
        }
        if (ends == Ends.WITH_A_FAILURE && failures == 0) {
            throw new IllegalArgumentException("nothing ended with a failure where none was");
        }
    }

    /** T / r; without a failure there is none, and infinity is given. */
    public double likely() {
        return running / failures;
    }

    /**
     * What it is at least.
     *
     * @param confidence that it is not less, above 0 and below 1
     */
    public double atLeast(double confidence) {
        return running / gamma(ends == Ends.WITH_A_FAILURE ? failures : failures + 1, confidence);
    }

    /**
     * What it is at most; infinity without a failure.
     *
     * @param confidence that it is not more, above 0 and below 1
     */
    public double atMost(double confidence) {
        check(confidence);
        return failures == 0 ? Double.POSITIVE_INFINITY : running / gamma(failures, 1 - confidence);
    }

    /** Half a χ² of twice as many degrees is a gamma variable. */
    private static double gamma(int shape, double probability) {
        check(probability);
        return new GammaDistribution(shape, 1).inverseCumulativeProbability(probability);
    }

    private static void check(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a confidence lies between 0 and 1");
        }
    }
}
