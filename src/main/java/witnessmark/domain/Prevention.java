package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Money;

/**
 * What would have kept an incident from happening, and its price.
 *
 * @param incident which incident
 * @param what the inspection, renewal or spare
 * @param money what it costs, or null when nobody has asked
 * @param minutes minutes of own work, or null when not known
 * @param note anything else
 */
public record Prevention(
        Id<Incident> incident,
        String what,
        @Nullable Money money,
        @Nullable Integer minutes,
        String note) implements Fact {
    public Prevention {
        if (what.isBlank()) {
            throw new IllegalArgumentException("a prevention says what would have been done");
        }
        if (money != null && money.minor() < 0 || minutes != null && minutes < 0) {
            throw new IllegalArgumentException("a prevention costs nothing or more");
        }
    }
}
