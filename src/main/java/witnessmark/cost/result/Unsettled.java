package witnessmark.cost.result;

import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import witnessmark.quantity.Money;

/**
 * All money that is not settled yet.
 *
 * @param home the currency of its sums
 * @param rows what has a last day first, the nearest on top
 */
public record Unsettled(Currency home, List<ToSettle> rows) {
    public Unsettled {
        rows = List.copyOf(rows);
    }

    /** What is to be asked back, charged and used; only what there is. Rows without a rate are in no sum. */
    public Map<ToSettle.What, Money> sums() {
        Map<ToSettle.What, Money> sums = new EnumMap<>(ToSettle.What.class);
        rows.stream()
                .filter(row -> row.home() != null)
                .forEach(row -> sums.merge(row.what().together(), Objects.requireNonNull(row.home()), Money::plus));
        return sums;
    }

    /** The sum of all rows that have a rate. */
    public Money total() {
        return sums().values().stream().reduce(Money.none(home), Money::plus);
    }

    /** How many rows are in no sum. */
    public int noRate() {
        return (int) rows.stream().filter(row -> row.home() == null).count();
    }

    /** How many costs stand in more than one row, as one that can be asked back and is a customer's too. */
    public int twice() {
        return (int)
                rows.stream().collect(Collectors.groupingBy(row -> row.line().id())).values().stream()
                        .filter(of -> of.size() > 1)
                        .count();
    }
}
