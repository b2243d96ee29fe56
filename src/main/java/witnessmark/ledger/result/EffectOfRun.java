package witnessmark.ledger.result;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.quantity.Counter;

/**
 * What writing a run, or correcting one, changes.
 *
 * @param engine the engine's life by every counter that changes
 * @param charged the parts and sets that were fitted when it went out, in the engine first, then in the car
 * @param limits every limit whose use changes, worst after it first
 */
public record EffectOfRun(List<LifeChange> engine, List<Id<Part>> charged, List<Effect> limits) {
    public EffectOfRun {
        engine = List.copyOf(engine);
        charged = List.copyOf(charged);
        limits = List.copyOf(limits);
    }

    /** The counters in which the engine's life changes. */
    public Set<Counter> counters() {
        return engine.stream().map(change -> change.after().counter()).collect(Collectors.toUnmodifiableSet());
    }
}
