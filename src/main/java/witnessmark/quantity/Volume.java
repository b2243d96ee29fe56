package witnessmark.quantity;

import java.math.BigDecimal;

/**
 * A volume of oil or fuel. Never negative.
 *
 * @param microlitres microlitres, 0 or more
 */
public record Volume(long microlitres) implements Comparable<Volume> {
    public Volume {
        if (microlitres < 0) {
            throw new IllegalArgumentException("a volume is 0 or more, not " + microlitres);
        }
    }

    /** The measure from a decimal figure in litres, to the nearest microlitre. */
    public static Volume ofLitres(BigDecimal figure) {
        return new Volume(Exact.nearest(figure.multiply(BigDecimal.valueOf(1000000L))));
    }

    /**
     * Reads back what {@link #text()} wrote: a plain decimal in litres.
     *
     * @throws NumberFormatException if the text is no such figure or is finer than one microlitre
     */
    public static Volume parse(String text) {
        return new Volume(Exact.read(text, 1000000L));
    }

    /** The figure in litres as plain decimal text, exact. */
    public String text() {
        return Exact.text(microlitres, 1000000L);
    }

    /** The figure in litres, exact. */
    public BigDecimal inLitres() {
        return BigDecimal.valueOf(microlitres).divide(BigDecimal.valueOf(1000000L));
    }

    @Override
    public int compareTo(Volume other) {
        return Long.compare(microlitres, other.microlitres);
    }
}
