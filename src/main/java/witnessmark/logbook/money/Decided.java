package witnessmark.logbook.money;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.IncidentCost;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Entry;

/**
 * A decision with the ways that were open, and what came of it.
 *
 * @param decision the question
 * @param options the ways, in the order they were written
 * @param cost of the incident it led to, or null when it led to none
 */
public record Decided(
        Entry<Decision> decision,
        List<Entry<DecisionOption>> options,
        @Nullable IncidentCost cost) {
    public Decided {
        options = List.copyOf(options);
    }
}
