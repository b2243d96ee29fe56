package witnessmark.cost.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/**
 * One bar of what failures went on.
 *
 * @param subject what it stands for: a cause area, a kind of part, an event, a car, an engine, an incident; null for
 *     what nobody has said
 * @param amount how much
 * @param parts the incidents in it, dearest first; together exactly the amount
 * @param running running of the engine or car it stands for, or null where there is none
 */
public record Bar(
        @Nullable Object subject,
        Money amount,
        List<Part> parts,
        @Nullable RunningTime running) {
    public Bar {
        parts = List.copyOf(parts);
    }

    /**
     * An incident's part in a bar.
     *
     * @param incident which one
     * @param whole all it cost
     * @param amount how much of that is in this bar
     */
    public record Part(Id<Incident> incident, Money whole, Money amount) {}
}
