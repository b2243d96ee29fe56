package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How a figure in a unit turns into a whole count and back: {@code count = (figure + shift) * over / under}, as a
 * fraction, so that no factor is rounded before the result is.
 */
record Scale(BigDecimal shift, BigDecimal over, BigDecimal under) {

    static Scale of(String perUnit) {
        return new Scale(BigDecimal.ZERO, new BigDecimal(perUnit), BigDecimal.ONE);
    }

    static Scale of(String shift, String over, String under) {
        return new Scale(new BigDecimal(shift), new BigDecimal(over), new BigDecimal(under));
    }

    long count(BigDecimal figure) {
        return figure.add(shift)
                .multiply(over)
                .divide(under, 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    BigDecimal figure(long count, int decimals) {
        return BigDecimal.valueOf(count)
                .multiply(under)
                .subtract(shift.multiply(over))
                .divide(over, decimals, RoundingMode.HALF_UP);
    }
}
