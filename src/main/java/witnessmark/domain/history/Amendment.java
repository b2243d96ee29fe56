package witnessmark.domain.history;

import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One change to one record.
 *
 * @param id UUID of version 7
 * @param device the machine it was written on
 * @param number the device's running number, from 1
 * @param clock hybrid logical clock at writing; later writes that knew of this one have a later one
 * @param who who wrote it
 * @param change amendments written together share this; undo takes a change back whole
 * @param table the record's table
 * @param record the record's id
 * @param before columns changed, with their values before; empty when the record was new
 * @param after the same columns with their values after
 * @param why the reason given, or what the user did, in words
 * @param schema version of the schema it was written under
 * @param previousHash hash of the device's previous amendment, empty for its first
 * @param hash hash over everything else here
 */
public record Amendment(
        UUID id,
        String device,
        long number,
        HybridClock.Time clock,
        String who,
        UUID change,
        String table,
        UUID record,
        Map<String, @Nullable Object> before,
        Map<String, @Nullable Object> after,
        String why,
        int schema,
        String previousHash,
        String hash) {
    /** The order all devices agree on. */
    public static final Comparator<Amendment> ORDER = Comparator.comparing(Amendment::clock)
            .thenComparing(Amendment::device)
            .thenComparingLong(Amendment::number);

    public Amendment {
        before = Collections.unmodifiableMap(new TreeMap<>(before));
        after = Collections.unmodifiableMap(new TreeMap<>(after));
    }

    /** Whether this made the record. */
    public boolean makes() {
        return before.isEmpty();
    }
}
