package witnessmark.logbook.money;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.IncidentCost;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;

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

    /** @param costs what an incident cost */
    static Decided of(Facts facts, Entry<Decision> decision, Function<Id<Incident>, IncidentCost> costs) {
        Id<Incident> led = decision.fact().ledTo();
        return new Decided(
                decision,
                facts.of(DecisionOption.class).where(option -> option.decision().equals(decision.id())),
                led == null ? null : costs.apply(led));
    }
}
