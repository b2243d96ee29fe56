package witnessmark.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Decimal text of an integer held in a finer unit, both ways, without loss. */
final class Exact {
    private Exact() {}

    /** {@code value / perUnit} as plain decimal text; {@code perUnit} is a power of ten. */
    static String text(long value, long perUnit) {
        return BigDecimal.valueOf(value)
                .divide(BigDecimal.valueOf(perUnit))
                .stripTrailingZeros()
                .toPlainString();
    }

    /**
     * Reads plain decimal text as a count of the finer unit.
     *
     * @throws NumberFormatException if the text is no decimal number or is finer than the unit held
     */
    static long read(String text, long perUnit) {
        try {
            return new BigDecimal(text.strip())
                    .multiply(BigDecimal.valueOf(perUnit))
                    .longValueExact();
        } catch (ArithmeticException e) {
            throw new NumberFormatException("'" + text + "' is finer than 1/" + perUnit + " or too large");
        }
    }

    /** Nearest integer, halves away from zero, the rounding used wherever the logbook rounds. */
    static long nearest(BigDecimal value) {
        return value.setScale(0, RoundingMode.HALF_UP).longValueExact();
    }
}
