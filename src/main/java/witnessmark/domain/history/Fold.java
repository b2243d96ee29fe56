package witnessmark.domain.history;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Gives records back from their amendments. The set of amendments decides, not the order they came in: they are put in
 * {@link Amendment#ORDER}, each counts once, and the later write of a column wins. So two histories that went apart
 * fold to the same records on both sides (a last-writer-wins map, Shapiro, Preguiça, Baquero and Zawirski, INRIA
 * RR-7506, 2011).
 */
public final class Fold {
    private Fold() {}

    /**
     * The columns of every record named in the amendments, by table and id.
     *
     * @param amendments of any number of records and devices, in any order, repeats allowed
     */
    public static Map<String, Map<UUID, Map<String, @Nullable Object>>> records(Collection<Amendment> amendments) {
        Map<String, Map<UUID, Map<String, @Nullable Object>>> tables = new TreeMap<>();
        for (Amendment amendment : inOrder(amendments)) {
            tables.computeIfAbsent(amendment.table(), t -> new TreeMap<>())
                    .computeIfAbsent(amendment.record(), r -> new TreeMap<>())
                    .putAll(amendment.after());
        }
        return tables;
    }

    /** The columns of one record after all these amendments of it. */
    public static Map<String, @Nullable Object> record(Collection<Amendment> amendments) {
        Map<String, @Nullable Object> image = new TreeMap<>();
        for (Amendment amendment : inOrder(amendments)) {
            image.putAll(amendment.after());
        }
        return image;
    }

    private static List<Amendment> inOrder(Collection<Amendment> amendments) {
        Set<UUID> seen = new HashSet<>();
        return amendments.stream()
                .sorted(Amendment.ORDER)
                .filter(amendment -> seen.add(amendment.id()))
                .toList();
    }
}
