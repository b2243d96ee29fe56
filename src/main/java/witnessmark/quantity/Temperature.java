package witnessmark.quantity;

import java.math.BigDecimal;

/**
 * A temperature, held above absolute zero.
 *
 * @param millikelvin millikelvin above absolute zero, 0 or more
 */
public record Temperature(long millikelvin) implements Comparable<Temperature> {
    private static final long ICE = 273_150;

    public Temperature {
        if (millikelvin < 0) {
            throw new IllegalArgumentException("no temperature lies below absolute zero, not " + millikelvin);
        }
    }

    /** The measure from a decimal figure in degrees Celsius, to the nearest millikelvin. */
    public static Temperature ofCelsius(BigDecimal figure) {
        return new Temperature(Exact.nearest(figure.multiply(BigDecimal.valueOf(1000L))) + ICE);
    }

    /**
     * Reads back what {@link #text()} wrote: a plain decimal in degrees Celsius.
     *
     * @throws NumberFormatException if the text is no such figure or is finer than one millikelvin
     */
    public static Temperature parse(String text) {
        return new Temperature(Exact.read(text, 1000L) + ICE);
    }

    /** The figure in degrees Celsius as plain decimal text, exact. */
    public String text() {
        return Exact.text(millikelvin - ICE, 1000L);
    }

    /** The figure in degrees Celsius, exact. */
    public BigDecimal inCelsius() {
        return BigDecimal.valueOf(millikelvin - ICE).divide(BigDecimal.valueOf(1000L));
    }

    @Override
    public int compareTo(Temperature other) {
        return Long.compare(millikelvin, other.millikelvin);
    }
}
