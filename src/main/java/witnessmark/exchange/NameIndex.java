package witnessmark.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The rows of one kind by id and by name. Names are matched as written first, then without spaces, dashes and letter
 * case; rows of the folder come before those of the logbook.
 */
final class NameIndex {
    private final Set<UUID> ids = new HashSet<>();
    private final Shelf folder = new Shelf();
    private final Shelf logbook = new Shelf();

    /**
     * What a text may mean.
     *
     * @param id the row meant, or null when there is none or there are several
     * @param readings the first two of several rows meant equally well, else empty
     */
    record Match(@Nullable UUID id, List<UUID> readings) {
        static final Match NONE = new Match(null, List.of());
    }

    private record Named(UUID id, boolean inForce) {}

    private static final class Shelf {
        private final Map<String, List<Named>> asWritten = new HashMap<>();
        private final Map<String, List<Named>> plain = new HashMap<>();

        void add(String name, Named row) {
            asWritten.computeIfAbsent(name, n -> new ArrayList<>(1)).add(row);
            plain.computeIfAbsent(WholeName.plain(name), n -> new ArrayList<>(1))
                    .add(row);
        }
    }

    /**
     * Adds a row.
     *
     * @param name its whole name, or null when it has none
     * @param ofFolder whether it stands in the folder; else it is in the logbook only
     */
    void add(UUID id, @Nullable String name, boolean inForce, boolean ofFolder) {
        ids.add(id);
        if (name != null) {
            (ofFolder ? folder : logbook).add(name, new Named(id, inForce));
        }
    }

    boolean has(UUID id) {
        return ids.contains(id);
    }

    /** The row a text means. Of several with one name the one in force is meant. */
    Match find(String text) {
        if (WholeName.isId(text) && ids.contains(UUID.fromString(text))) {
            return new Match(UUID.fromString(text), List.of());
        }
        Match asWritten = choose(text, folder.asWritten, logbook.asWritten);
        return asWritten != Match.NONE ? asWritten : choose(WholeName.plain(text), folder.plain, logbook.plain);
    }

    private static Match choose(String name, Map<String, List<Named>> ofFolder, Map<String, List<Named>> ofLogbook) {
        List<Named> found = ofFolder.getOrDefault(name, ofLogbook.getOrDefault(name, List.of()));
        return found.isEmpty() ? Match.NONE : choose(found);
    }

    private static Match choose(List<Named> found) {
        List<Named> inForce = found.stream().filter(Named::inForce).toList();
        List<Named> meant = found.size() > 1 && inForce.size() == 1 ? inForce : found;
        return meant.size() == 1
                ? new Match(meant.get(0).id(), List.of())
                : new Match(null, List.of(meant.get(0).id(), meant.get(1).id()));
    }
}
