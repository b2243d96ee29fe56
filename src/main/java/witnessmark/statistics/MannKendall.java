package witnessmark.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Whether numbers rise or fall (H. B. Mann 1945, M. G. Kendall). Only their order counts, so neither their spread nor an
 * outlier does. With ties on either side the variance is Kendall's (Rank Correlation Methods, 4th edition, 4.5 and 5.9).
 *
 * @param n how many numbers
 * @param score S: pairs that rise less pairs that fall
 * @param variance of the score where there is no trend, ties allowed for
 * @param z the score, one nearer to 0, in standard deviations; 0 where all tie
 * @param p the chance of a score as far from 0, to either side, where there is no trend
 * @param exact whether the chance was counted over all orders: without ties, up to 60 numbers; else the normal curve is taken
 * @param tau Kendall's tau-b, from −1 to 1; 0 where all tie
 */
public record MannKendall(int n, long score, double variance, double z, double p, boolean exact, double tau) {
    /** Fewer say nothing at all. */
    public static final int FEWEST = 2;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    /**
     * @param at when each was found, in any order and unit; what was found at the same time is not compared
     * @param numbers what was found
     * @throws IllegalArgumentException for fewer than two, or what is no finite number
     */
    public static MannKendall of(double[] at, double[] numbers) {
        Pairs.check(at, numbers, FEWEST);
        int n = at.length;
        long score = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                score += (long) (Math.signum(at[j] - at[i]) * Math.signum(numbers[j] - numbers[i]));
            }
        }
        int[] tiedAt = Pairs.ties(at);
        int[] tied = Pairs.ties(numbers);
        double variance = variance(n, tiedAt, tied);
        boolean exact = tiedAt.length == 0 && tied.length == 0 && n <= KendallScores.MOST;
        double z = variance > 0 ? Long.signum(score) * Math.max(0, Math.abs(score) - 1) / Math.sqrt(variance) : 0;
        double beyond =
                exact ? KendallScores.of(n).atLeast(Math.abs(score)) : NORMAL.cumulativeProbability(-Math.abs(z));
        return new MannKendall(n, score, variance, z, Math.min(1, 2 * beyond), exact, tau(n, score, tiedAt, tied));
    }

    /** The chance of a score as far on the side it is on, where there is no trend. */
    public double oneSided() {
        return p / 2;
    }

    /** Kendall's variance of S with ties t among the times and u among the numbers. */
    static double variance(int n, int[] t, int[] u) {
        double all = n * (n - 1.0) * (2.0 * n + 5);
        double second = sum(t, 2) * sum(u, 2) / (2.0 * n * (n - 1));
        double third = n < 3 ? 0 : sum(t, 3) * sum(u, 3) / (9.0 * n * (n - 1) * (n - 2));
        return (all - weighted(t) - weighted(u)) / 18 + second + third;
    }

    private static double weighted(int[] ties) {
        double sum = 0;
        for (int tie : ties) {
            sum += tie * (tie - 1.0) * (2.0 * tie + 5);
        }
        return sum;
    }

    /** Σ of t(t − 1), or of t(t − 1)(t − 2). */
    private static double sum(int[] ties, int factors) {
        double sum = 0;
        for (int tie : ties) {
            sum += tie * (tie - 1.0) * (factors == 2 ? 1 : tie - 2.0);
        }
        return sum;
    }

    private static double tau(int n, long score, int[] t, int[] u) {
        double pairs = n * (n - 1.0) / 2;
        double scale = Math.sqrt((pairs - sum(t, 2) / 2) * (pairs - sum(u, 2) / 2));
        return scale > 0 ? score / scale : 0;
    }
}
