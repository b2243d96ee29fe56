package witnessmark.quantity;

import java.math.BigDecimal;

/**
 * How far a car went. Never negative.
 *
 * @param metres metres, 0 or more
 */
public record Distance(long metres) implements Comparable<Distance> {
    public Distance {
        if (metres < 0) {
            throw new IllegalArgumentException("a distance is 0 m or more, not " + metres);
        }
    }

    /** The measure from a decimal figure in kilometres, to the nearest metre. */
    public static Distance ofKilometres(BigDecimal figure) {
        return new Distance(Exact.nearest(figure.multiply(BigDecimal.valueOf(1000L))));
    }

    /**
     * Reads back what {@link #text()} wrote: a plain decimal in kilometres.
     *
     * @throws NumberFormatException if the text is no such figure or is finer than one metre
     */
    public static Distance parse(String text) {
        return new Distance(Exact.read(text, 1000L));
    }

    /** The figure in kilometres as plain decimal text, exact. */
    public String text() {
        return Exact.text(metres, 1000L);
    }

    /** The figure in kilometres, exact. */
    public BigDecimal inKilometres() {
        return BigDecimal.valueOf(metres).divide(BigDecimal.valueOf(1000L));
    }

    @Override
    public int compareTo(Distance other) {
        return Long.compare(metres, other.metres);
    }
}
