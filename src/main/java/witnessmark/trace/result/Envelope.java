package witnessmark.trace.result;

import java.util.Arrays;

/**
 * Least and most of a channel for each of so many equal pieces of time, to be drawn. No extreme is lost; a piece without
 * figures is NaN.
 */
public final class Envelope {
    private final long from;
    private final long until;
    private final double[] least;
    private final double[] most;

    /**
     * Begun without a figure.
     *
     * @param pieces 1 or more
     */
    public Envelope(long from, long until, int pieces) {
        this.from = from;
        this.until = until;
        this.least = new double[pieces];
        this.most = new double[pieces];
        Arrays.fill(least, Double.NaN);
        Arrays.fill(most, Double.NaN);
    }

    /** Takes what was least and most at a time into the piece it falls in. */
    public void add(long micros, double low, double high) {
        long span = Math.max(1, until - from);
        int piece = (int) Math.max(0, Math.min(least.length - 1, (micros - from) * least.length / span));
        least[piece] = less(least[piece], low);
        most[piece] = more(most[piece], high);
    }

    /** The lesser of two, the other where one is NaN. */
    public static double less(double one, double other) {
        return Double.isNaN(one) || other < one ? other : one;
    }

    /** The greater of two, the other where one is NaN. */
    public static double more(double one, double other) {
        return Double.isNaN(one) || other > one ? other : one;
    }

    public int pieces() {
        return least.length;
    }

    /** The least in a piece, NaN when it has no figure. */
    public double least(int piece) {
        return least[piece];
    }

    public double most(int piece) {
        return most[piece];
    }
}
