package witnessmark.cost.result;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.quantity.Money;

/**
 * Money that can be asked back until a day.
 *
 * @param line the cost it was paid by
 * @param event the event it was for, or null
 * @param car the car it was for, or null
 * @param by the last day to ask
 * @param daysLeft days from the day looked at to the last day; below 0 when that is past
 * @param still what has not come back yet, in the currency of the line
 */
public record Refund(
        Entry<CostLine> line,
        @Nullable Event event,
        @Nullable Car car,
        LocalDate by,
        long daysLeft,
        Money still) {
    /** Whether the last day is past. */
    public boolean late() {
        return daysLeft < 0;
    }

    /** Whether some of it came back already. */
    public boolean begun() {
        return !line.fact().recovered().isNone();
    }
}
