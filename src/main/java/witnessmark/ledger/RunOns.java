package witnessmark.ledger;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.RunOn;
import witnessmark.quantity.Moment;

/** The decisions to go past a limit that were signed by a day; of several for the same the last counts. */
final class RunOns {
    private record Key(Id<?> limit, Id<?> subject) {}

    private final Map<Key, Entry<RunOn>> last;

    private RunOns(Map<Key, Entry<RunOn>> last) {
        this.last = last;
    }

    static RunOns of(Facts facts, AsOf asOf) {
        Map<Key, Entry<RunOn>> last = new HashMap<>();
        facts.of(RunOn.class)
                .inForce()
                .filter(entry -> asOf.counts(entry.fact().at()))
                .sorted(Comparator.<Entry<RunOn>, Moment>comparing(
                                entry -> entry.fact().at())
                        .thenComparing(Entry::id))
                .forEach(entry -> last.put(key(entry.fact()), entry));
        return new RunOns(last);
    }

    /** The decision to go past a limit where it falls, or null. */
    @Nullable
    Entry<RunOn> past(Id<?> limit, Seat seat) {
        Id<?> subject = seat.part() != null ? seat.part() : seat.engine() != null ? seat.engine() : seat.car();
        return subject == null ? null : last.get(new Key(limit, subject));
    }

    private static Key key(RunOn runOn) {
        Id<?> limit = runOn.limit() != null ? runOn.limit() : runOn.readingLimit();
        Id<?> subject = runOn.part() != null ? runOn.part() : runOn.engine() != null ? runOn.engine() : runOn.car();
        return new Key(Objects.requireNonNull(limit), Objects.requireNonNull(subject));
    }
}
