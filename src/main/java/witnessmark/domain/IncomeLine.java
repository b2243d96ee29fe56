package witnessmark.domain;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Money;

/**
 * Money that came in.
 *
 * @param day the day it counts for
 * @param what what it was for
 * @param kind what kind of income
 * @param event from which event, or null
 * @param car for which car, or null
 * @param amount how much; below nothing when it was paid back
 * @param rate units of the home currency for one of this, that day; null in the home currency
 * @param from who paid
 * @param note anything else
 */
public record IncomeLine(
        LocalDate day,
        String what,
        IncomeKind kind,
        @Nullable Id<Event> event,
        @Nullable Id<Car> car,
        Money amount,
        @Nullable BigDecimal rate,
        String from,
        String note)
        implements Fact {
    public IncomeLine {
        if (what.isBlank()) {
            throw new IllegalArgumentException("an income says what it was for");
        }
        if (rate != null && rate.signum() <= 0) {
            throw new IllegalArgumentException("a rate is more than 0");
        }
        rate = rate == null ? null : Decimals.plain(rate);
    }
}
