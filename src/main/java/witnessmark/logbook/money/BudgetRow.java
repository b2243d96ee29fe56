package witnessmark.logbook.money;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Piece;
import witnessmark.domain.BudgetLine;
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
 * @param lines what was planned, in the order of its days
 * @param pieces what was spent, in the order of its days
 */
public record BudgetRow(
        @Nullable Entry<Event> event,
        @Nullable Entry<Car> car,
        Money planned,
        Money spent,
        List<Planned> lines,
        List<Piece> pieces) {
    public BudgetRow {
        lines = List.copyOf(lines);
        pieces = List.copyOf(pieces);
    }

    /**
     * What one line of the budget plans.
     *
     * @param line which line
     * @param amount in the home currency
     */
    public record Planned(Entry<BudgetLine> line, Money amount) {}
}
