package witnessmark.domain;

import java.time.LocalDate;
import witnessmark.quantity.Money;

/**
 * What an hour is valued at, from a day on.
 *
 * @param kind an hour of what
 * @param amount for one hour
 * @param from the first day it holds
 * @param note where it comes from
 */
public record HourRate(RateKind kind, Money amount, LocalDate from, String note) implements Fact {
    public HourRate {
        if (amount.minor() < 0) {
            throw new IllegalArgumentException("an hour is worth nothing or more");
        }
    }
}
