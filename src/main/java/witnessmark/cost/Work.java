package witnessmark.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** What time is worth at a rate by the hour. */
public final class Work {
    private static final BigDecimal HOUR = BigDecimal.valueOf(3_600_000);

    private Work() {}

    /** Time at a rate for one hour, to the nearest minor unit, halves up. */
    public static Money valued(Money hour, RunningTime time) {
        return new Money(
                BigDecimal.valueOf(hour.minor())
                        .multiply(BigDecimal.valueOf(time.millis()))
                        .divide(HOUR, 0, RoundingMode.HALF_UP)
                        .longValueExact(),
                hour.currency());
    }
}
