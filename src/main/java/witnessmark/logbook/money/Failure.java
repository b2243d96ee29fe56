package witnessmark.logbook.money;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.IncidentCost;
import witnessmark.domain.Decision;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.quantity.Money;

/**
 * An incident, what it cost, and what would have kept it from happening.
 *
 * @param incident which one
 * @param cost in its columns
 * @param prevention what it would have taken
 * @param cameOf the decisions it came of
 */
public record Failure(Entry<Incident> incident, IncidentCost cost, Kept prevention, List<Entry<Decision>> cameOf) {
    public Failure {
        cameOf = List.copyOf(cameOf);
    }

    /**
     * What prevention takes.
     *
     * @param count how many things would have been done
     * @param money together, of those whose price is known
     * @param minutes of own work together, of those whose time is known
     * @param labour that work at the team's rate, or null where nobody set one
     * @param complete whether every price and time is known
     */
    public record Kept(
            int count, Money money, int minutes, @Nullable Money labour, boolean complete) {}
}
