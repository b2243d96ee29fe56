package witnessmark.study.result;

import java.math.BigDecimal;

/** What a column of a pull holds, and between which figures it can lie at all; beyond them something else was typed. */
public enum PullColumn {
    /** rpm. */
    SPEED(200, 25_000),
    /** N·m. */
    TORQUE(1, 3_000),
    /** kW. */
    POWER(0, 2_500),
    LAMBDA(0.5, 2),
    /** bar. */
    OIL_PRESSURE(0, 20),
    /** °C. */
    OIL(-20, 200),
    /** °C. */
    WATER(-20, 150),
    /** °C. */
    EXHAUST(0, 1_300);

    private final BigDecimal low;
    private final BigDecimal high;

    PullColumn(double low, double high) {
        this.low = plain(low);
        this.high = plain(high);
    }

    private static BigDecimal plain(double figure) {
        return new BigDecimal(BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString());
    }

    /** The least. */
    public BigDecimal low() {
        return low;
    }

    /** The most. */
    public BigDecimal high() {
        return high;
    }

    public boolean holds(BigDecimal figure) {
        return figure.compareTo(low) >= 0 && figure.compareTo(high) <= 0;
    }
}
