package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Table;
import witnessmark.quantity.Moment;

/**
 * The entries of one kind that count, gathered by what they belong to and sorted by when they happened, then by id;
 * immutable. Groups a change does not touch are shared with the next one.
 *
 * @param <O> what they belong to
 * @param <F> the kind of entry
 */
final class Grouped<O extends Fact, F extends Fact> {
    private static final Comparator<Entry<?>> ORDER = Comparator.<Entry<?>>comparingLong(Grouped::happened)
            .thenComparing(entry -> entry.id().value());

    private final Map<Id<O>, List<Entry<F>>> groups;
    private final Function<F, @Nullable Id<O>> owner;
    private final Predicate<Entry<F>> counts;

    private Grouped(Map<Id<O>, List<Entry<F>>> groups, Function<F, @Nullable Id<O>> owner, Predicate<Entry<F>> counts) {
        this.groups = groups;
        this.owner = owner;
        this.counts = counts;
    }

    /**
     * Gathers a table.
     *
     * @param owner what an entry belongs to, or null when it belongs to none of these
     * @param counts whether an entry counts
     */
    static <O extends Fact, F extends Fact> Grouped<O, F> of(
            Table<F> table, Function<F, @Nullable Id<O>> owner, Predicate<Entry<F>> counts) {
        Map<Id<O>, List<Entry<F>>> groups = new HashMap<>();
        for (Entry<F> entry : table.all()) {
            Id<O> to = counts.test(entry) ? owner.apply(entry.fact()) : null;
            if (to != null) {
                groups.computeIfAbsent(to, id -> new ArrayList<>()).add(entry);
            }
        }
        for (List<Entry<F>> group : groups.values()) {
            group.sort(ORDER);
        }
        return new Grouped<>(groups, owner, counts);
    }

    /** The groups once a change is in; every group it does not touch is the same object. */
    Grouped<O, F> after(Diff<F> diff) {
        Set<Id<O>> touched = touched(diff);
        if (touched.isEmpty()) {
            return this;
        }
        Map<Id<O>, List<Entry<F>>> next = new HashMap<>(groups);
        Set<Id<F>> gone = new HashSet<>();
        diff.gone().forEach(entry -> gone.add(entry.id()));
        for (Id<O> to : touched) {
            List<Entry<F>> group = new ArrayList<>(of(to));
            group.removeIf(entry -> gone.contains(entry.id()));
            next.put(to, group);
        }
        for (Entry<F> entry : diff.come()) {
            Id<O> to = counts.test(entry) ? owner.apply(entry.fact()) : null;
            if (to != null) {
                next.computeIfAbsent(to, id -> new ArrayList<>()).add(entry);
            }
        }
        for (Id<O> to : touched) {
            next.computeIfPresent(to, (id, group) -> {
                group.sort(ORDER);
                return group.isEmpty() ? null : group;
            });
        }
        return new Grouped<>(next, owner, counts);
    }

    /** Whose groups a change touches. */
    Set<Id<O>> touched(Diff<F> diff) {
        Set<Id<O>> touched = new HashSet<>();
        for (List<Entry<F>> entries : List.of(diff.gone(), diff.come())) {
            for (Entry<F> entry : entries) {
                Id<O> to = owner.apply(entry.fact());
                if (to != null) {
                    touched.add(to);
                }
            }
        }
        return touched;
    }

    List<Entry<F>> of(Id<O> owner) {
        return groups.getOrDefault(owner, List.of());
    }

    Set<Id<O>> owners() {
        return Collections.unmodifiableSet(groups.keySet());
    }

    private static long happened(Entry<?> entry) {
        Moment happened = entry.fact().happened();
        return happened == null ? Long.MIN_VALUE : happened.epochMillis();
    }
}
