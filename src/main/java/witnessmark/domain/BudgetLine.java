package witnessmark.domain;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Money;

/**
 * What is planned to be spent.
 *
 * @param day the day it counts for
 * @param event for which event, or null
 * @param car for which car, or null for all
 * @param category what kind of cost
 * @param amount how much
 * @param rate units of the home currency for one of this; null in the home currency
 * @param note anything else
 */
public record BudgetLine(
        LocalDate day,
        @Nullable Id<Event> event,
        @Nullable Id<Car> car,
        CostCategory category,
        Money amount,
        @Nullable BigDecimal rate,
        String note)
        implements Fact {
    public BudgetLine {
        if (rate != null && rate.signum() <= 0) {
            throw new IllegalArgumentException("a rate is more than 0");
        }
        rate = rate == null ? null : Decimals.plain(rate);
    }
}
