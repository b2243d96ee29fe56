package witnessmark.trace.reduce;

import witnessmark.trace.result.Extremes;

/** The highest and lowest figures that were held for two samples, and how long a limit was passed. */
final class Held {
    private final double limit;
    private double highest = Double.NEGATIVE_INFINITY;
    private double lowest = Double.POSITIVE_INFINITY;
    private long highestAt;
    private long lowestAt;
    private double beyond;
    private double last = Double.NaN;
    private long lastAt;

    /** @param limit or NaN for none */
    Held(double limit) {
        this.limit = limit;
    }

    /** @param next whether it follows on the one before */
    void add(long micros, double value, boolean next) {
        if (next && !Double.isNaN(last)) {
            double high = Math.min(last, value);
            double low = Math.max(last, value);
            if (high > highest) {
                highest = high;
                highestAt = micros;
            }
            if (low < lowest) {
                lowest = low;
                lowestAt = micros;
            }
            beyond += Double.isNaN(limit) ? 0 : Linear.shareFrom(last, value, limit) * (micros - lastAt);
        }
        last = value;
        lastAt = micros;
    }

    Extremes found() {
        boolean any = highest > Double.NEGATIVE_INFINITY;
        return new Extremes(
                any ? highest : null,
                highestAt,
                any ? lowest : null,
                lowestAt,
                Double.isNaN(limit) ? null : Math.round(beyond));
    }
}
