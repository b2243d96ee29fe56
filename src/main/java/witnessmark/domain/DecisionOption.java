package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Money;

/**
 * One of the ways open in a decision.
 *
 * @param decision of which decision
 * @param name what would be done; unique within the decision
 * @param money what it costs, or null when not known
 * @param minutes minutes of own work, or null when not known
 * @param days days until it is done, or null when not known
 * @param limit the limit it goes past, or null
 * @param past what it goes past, in words; empty for nothing
 * @param taken whether this was decided
 * @param note anything else
 */
public record DecisionOption(
        Id<Decision> decision,
        String name,
        @Nullable Money money,
        @Nullable Integer minutes,
        @Nullable Integer days,
        @Nullable Id<Limit> limit,
        String past,
        boolean taken,
        String note)
        implements Fact {
    public DecisionOption {
        if (minutes != null && minutes < 0 || days != null && days < 0) {
            throw new IllegalArgumentException("hours and days of an option are 0 or more");
        }
    }

    @Override
    public String knownAs() {
        return name;
    }

    @Override
    public Id<?> knownWithin() {
        return decision;
    }
}
