package witnessmark.statistics;

/**
 * How likely each score of Kendall is where there is no trend and nothing comes twice: the count of orders of n things by
 * their inversions (M. G. Kendall, Rank Correlation Methods, 4th edition, chapter 5).
 */
final class KendallScores {
    /** Up to so many things every order is counted; beyond, the normal curve is as good. */
    static final int MOST = 60;

    private final int pairs;
    /** At i the chance of a score of {@code 2i − pairs} or more. */
    private final double[] atLeast;

    private KendallScores(int pairs, double[] atLeast) {
        this.pairs = pairs;
        this.atLeast = atLeast;
    }

    /** @param n from 1 to {@link #MOST} */
    static KendallScores of(int n) {
        double[] chance = {1};
        for (int things = 2; things <= n; things++) { // the new one has 0 to things - 1 before it, each as likely
            double[] next = new double[chance.length + things - 1];
            for (int before = 0; before < things; before++) {
                for (int i = 0; i < chance.length; i++) {
                    next[i + before] += chance[i] / things;
                }
            }
            chance = next;
        }
        double sum = 0;
        double[] atLeast = new double[chance.length];
        for (int i = chance.length - 1; i >= 0; i--) {
            sum += chance[i];
            atLeast[i] = Math.min(1, sum);
        }
        return new KendallScores(n * (n - 1) / 2, atLeast);
    }

    /** The chance of that score or a higher one. */
    double atLeast(long score) {
        if (score <= -pairs) {
            return 1;
        }
        int place = Math.toIntExact(Math.floorDiv(score + pairs + 1, 2));
        return place < atLeast.length ? atLeast[place] : 0;
    }

    /** The least score that is reached no more often than that; more than all pairs where none is so rare. */
    int rarerThan(double chance) {
        int score = -pairs;
        while (score <= pairs && atLeast(score) > chance * (1 + 1e-12)) {
            score += 2;
        }
        return score;
    }
}
