package witnessmark.logbook.money;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.quantity.Money;

/**
 * What was planned and what was spent for one car at one event.
 *
 * @param event which event, or null for what is for none
 * @param car which car, or null for what is for none in particular
 * @param planned in the budget
 * @param spent so far, failures included, own work not
 */
public record BudgetRow(
        @Nullable Entry<Event> event, @Nullable Entry<Car> car, Money planned, Money spent) {}
