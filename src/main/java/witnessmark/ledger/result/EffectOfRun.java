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
 * @param bare those of them that nothing is held against
 * @param marks every mark that changes, and every one that holds, worst after it first
 */
public record EffectOfRun(
        List<LifeChange> engine, List<Id<Part>> charged, List<Id<Part>> bare, List<MarkChange> marks) {
    public EffectOfRun {
        engine = List.copyOf(engine);
        charged = List.copyOf(charged);
        bare = List.copyOf(bare);
        marks = List.copyOf(marks);
    }

    /** The counters in which the engine's life changes. */
    public Set<Counter> counters() {
        return engine.stream().map(change -> change.after().counter()).collect(Collectors.toUnmodifiableSet());
    }
}
