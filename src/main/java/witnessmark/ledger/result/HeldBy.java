package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Trigger;
import witnessmark.quantity.Moment;

/**
 * What holds an engine or a part.
 *
 * @param cause the run, the reading or the written hold
 * @param rule the rule by which a run or reading holds, or null for a written hold
 * @param part the part held, or null when it is the engine with all that is in it
 * @param engine the engine it happened on, or null when the part was in none
 * @param since when it happened
 * @param figure what the run reached, in the unit of the rule's kind; null when a reading or a person holds
 */
public record HeldBy(
        Entry<?> cause,
        @Nullable Entry<Trigger> rule,
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        Moment since,
        @Nullable Long figure)
        implements MarkReason {
    /** What is to be looked at before it may be cleared; empty when nobody said. */
    public String asks() {
        return rule != null ? rule.fact().asks() : cause.fact() instanceof Hold hold ? hold.asks() : "";
    }

    @Override
    public MarkState state() {
        return MarkState.HELD;
    }
}
