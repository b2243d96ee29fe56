package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Table;

/**
 * A time in which a part's life is that of one entry: its own, and before it was split off that of its set.
 *
 * @param part the part or set
 * @param from first millisecond
 * @param to the millisecond after the last
 */
record Tenure(Id<Part> part, long from, long to) {
    /** The tenures of a part, its own first, then those of the sets it came from. */
    static List<Tenure> of(Table<Part> parts, Id<Part> part) {
        Part fact = fact(parts, part);
        if (fact == null || fact.splitAt() == null) {
            return List.of(new Tenure(part, Long.MIN_VALUE, Long.MAX_VALUE));
        }
        List<Tenure> tenures = new ArrayList<>();
        Set<Id<Part>> met = new HashSet<>();
        Id<Part> of = part;
        long to = Long.MAX_VALUE;
        // A set that was split from itself contradicts itself; each is met once, so that the sum still ends.
        while (of != null && met.add(of)) {
            Part now = fact(parts, of);
            long from = now == null || now.splitAt() == null
                    ? Long.MIN_VALUE
                    : now.splitAt().epochMillis();
            if (from < to) {
                tenures.add(new Tenure(of, from, to));
            }
            to = Math.min(to, from);
            of = now == null ? null : now.ofSet();
        }
        return tenures;
    }

    private static @Nullable Part fact(Table<Part> parts, Id<Part> part) {
        return parts.find(part).map(Entry::fact).orElse(null);
    }
}
