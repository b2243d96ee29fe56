package witnessmark.mechanics;

/**
 * What running at engine speed n wears, as the time at a reference speed that wears as much:
 * {@code D = ∫(n/n_ref)^k dt}. Wear of different speeds adds up (Palmgren and Miner: A. Palmgren 1924, M. A. Miner 1945).
 * There is no usual exponent: a team types its own, or {@link #ofSlope} gives it for stress from inertia. The figure says
 * nothing without the plain running time beside it.
 *
 * @param reference the speed at which an hour counts as an hour, above 0; any unit, the same for all speeds
 * @param exponent k, above 0
 */
public record RevDamage(double reference, double exponent) {
    /** Speeds nearer to each other than this share of them are taken by their middle; exact differences would cancel. */
    private static final double NEAR = 1e-4;

    /**
     * @param seconds the equivalent time at the reference speed, speeds spread evenly within each band
     * @param least if all of each band were at its lower edge
     * @param most if all of each band were at its upper edge
     */
    public record Equivalent(double seconds, double least, double most) {}

    public RevDamage {
        if (!(reference > 0) || !(exponent > 0) || reference == Double.POSITIVE_INFINITY || exponent > 100) {
            throw new IllegalArgumentException("no reference speed or exponent: " + reference + ", " + exponent);
        }
    }

    /**
     * For stress that grows with the square of speed, as that of inertia does, and life that falls with the m-th power of
     * stress: a turn wears as {@code n^(2m)} and turns come as {@code n}, so {@code k = 1 + 2m}.
     *
     * @param slope m of the S–N line, above 0; {@link Basquin#slope}
     */
    public static RevDamage ofSlope(double reference, double slope) {
        if (!(slope > 0)) {
            throw new IllegalArgumentException("an S\u2013N line falls: m is above 0, not " + slope);
        }
        return new RevDamage(reference, 1 + 2 * slope);
    }

    /**
     * Of a time in which speed went evenly from one to another; exact.
     *
     * @param seconds 0 or more
     */
    public double ofPiece(double from, double to, double seconds) {
        return meanPower(Math.min(from, to) / reference, Math.max(from, to) / reference) * seconds;
    }

    /**
     * Of time in bands of speed.
     *
     * @param edges of the bands, rising, one more than there are bands; from 0 up
     * @param seconds in each band
     * @throws IllegalArgumentException if the edges do not rise, a time is below 0 or no number, or the counts differ
     */
    public Equivalent ofBands(double[] edges, double[] seconds) {
        if (edges.length != seconds.length + 1) {
            throw new IllegalArgumentException(edges.length + " edges for " + seconds.length + " bands");
        }
        double sum = 0;
        double least = 0;
        double most = 0;
        for (int i = 0; i < seconds.length; i++) {
            if (!(edges[i] >= 0) || !(edges[i + 1] > edges[i]) || !(seconds[i] >= 0)) {
                throw new IllegalArgumentException("band " + i + " is none");
            }
            if (seconds[i] > 0) { // an open band at the top is allowed as long as nothing ran in it
                sum += ofPiece(edges[i], edges[i + 1], seconds[i]);
                least += Math.pow(edges[i] / reference, exponent) * seconds[i];
                most += Math.pow(edges[i + 1] / reference, exponent) * seconds[i];
            }
        }
        return new Equivalent(sum, least, most);
    }

    /** The mean of {@code x^k} for x spread evenly: {@code (b^(k+1) − a^(k+1)) / ((k+1)(b − a))}. */
    private double meanPower(double a, double b) {
        if (!(a >= 0) || b == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("a speed is a number from 0 up");
        }
        double middle = (a + b) / 2;
        if (b - a <= NEAR * middle) {
            double share = middle == 0 ? 0 : (b - a) / middle;
            return Math.pow(middle, exponent) * (1 + exponent * (exponent - 1) / 24 * share * share);
        }
        double k = exponent + 1;
        return (Math.pow(b, k) - Math.pow(a, k)) / (k * (b - a));
    }
}
