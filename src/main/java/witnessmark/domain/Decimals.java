package witnessmark.domain;

import java.math.BigDecimal;

/** One way to hold a decimal figure, so that what reads the same is the same. */
final class Decimals {
    private Decimals() {}

    /** The same figure without zeros at its end and without an exponent. */
    static BigDecimal plain(BigDecimal figure) {
        BigDecimal stripped = figure.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
