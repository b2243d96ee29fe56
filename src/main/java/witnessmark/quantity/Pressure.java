package witnessmark.quantity;

import java.math.BigDecimal;

/**
 * A gauge pressure, as read on a dash.
 *
 * @param pascals pascals
 */
public record Pressure(long pascals) implements Comparable<Pressure> {

    /** The measure from a decimal figure in bar, to the nearest pascal. */
    public static Pressure ofBar(BigDecimal figure) {
        return new Pressure(Exact.nearest(figure.multiply(BigDecimal.valueOf(100000L))));
    }

    /**
     * Reads back what {@link #text()} wrote: a plain decimal in bar.
     *
     * @throws NumberFormatException if the text is no such figure or is finer than one pascal
     */
    public static Pressure parse(String text) {
        return new Pressure(Exact.read(text, 100000L));
    }

    /** The figure in bar as plain decimal text, exact. */
    public String text() {
        return Exact.text(pascals, 100000L);
    }

    /** The figure in bar, exact. */
    public BigDecimal inBar() {
        return BigDecimal.valueOf(pascals).divide(BigDecimal.valueOf(100000L));
    }

    @Override
    public int compareTo(Pressure other) {
        return Long.compare(pascals, other.pascals);
    }
}
