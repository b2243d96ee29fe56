package witnessmark.trace.reduce;

/** A figure that goes evenly from one value to another. */
final class Linear {
    private Linear() {}

    /** The share of the way at or above a level, 0 to 1. */
    static double shareFrom(double one, double other, double level) {
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        if (low >= level) {
            return 1;
        }
        return high < level ? 0 : (high - level) / (high - low);
    }
}
