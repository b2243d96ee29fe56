package witnessmark.quantity;

import java.math.BigDecimal;

/**
 * A length measured on a part. May be negative: a deck can stand proud.
 *
 * @param nanometres nanometres
 */
public record Length(long nanometres) implements Comparable<Length> {

    /** The measure from a decimal figure in millimetres, to the nearest nanometre. */
    public static Length ofMillimetres(BigDecimal figure) {
        return new Length(Exact.nearest(figure.multiply(BigDecimal.valueOf(1000000L))));
    }

    /**
     * Reads back what {@link #text()} wrote: a plain decimal in millimetres.
     *
     * @throws NumberFormatException if the text is no such figure or is finer than one nanometre
     */
    public static Length parse(String text) {
        return new Length(Exact.read(text, 1000000L));
    }

    /** The figure in millimetres as plain decimal text, exact. */
    public String text() {
        return Exact.text(nanometres, 1000000L);
    }

    /** The figure in millimetres, exact. */
    public BigDecimal inMillimetres() {
        return BigDecimal.valueOf(nanometres).divide(BigDecimal.valueOf(1000000L));
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }
}
