package witnessmark.logbook.dyno;

import java.math.BigDecimal;
import witnessmark.domain.Coded;

/** What a column of a pull holds, and between which figures it can lie at all; beyond them something else was typed. */
public enum PullColumn implements Coded {
    /** rpm. */
    SPEED("speed", 200, 25_000),
    /** N·m. */
    TORQUE("torque", 1, 3_000),
    /** kW. */
    POWER("power", 0, 2_500),
    LAMBDA("lambda", 0.5, 2),
    /** bar. */
    OIL_PRESSURE("oil pressure", 0, 20),
    /** °C. */
    OIL("oil", -20, 200),
    /** °C. */
    WATER("water", -20, 150),
    /** °C. */
    EXHAUST("exhaust", 0, 1_300);

    private final String code;
    private final BigDecimal low;
    private final BigDecimal high;

    PullColumn(String code, double low, double high) {
        this.code = code;
        this.low = plain(low);
        this.high = plain(high);
    }

    private static BigDecimal plain(double figure) {
        return new BigDecimal(BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString());
    }

    @Override
    public String code() {
        return code;
    }

    BigDecimal low() {
        return low;
    }

    BigDecimal high() {
        return high;
    }

    boolean holds(BigDecimal figure) {
        return figure.compareTo(low) >= 0 && figure.compareTo(high) <= 0;
    }
}
