package witnessmark.cost.result;

import java.util.Comparator;
import java.util.List;
import witnessmark.quantity.Money;

/**
 * From the lowest to the highest that a total can be.
 *
 * @param low the lowest
 * @param high the highest, of the same currency
 */
public record Span(Money low, Money high) {
    /** Over all of these, which are at least one. */
    static Span of(List<Money> totals) {
        Comparator<Money> byAmount = Comparator.comparingLong(Money::minor);
        return new Span(
                totals.stream().min(byAmount).orElseThrow(),
                totals.stream().max(byAmount).orElseThrow());
    }

    /** Whether there is only one total. */
    public boolean one() {
        return low.equals(high);
    }
}
