package witnessmark.logbook.port;

import java.util.List;
import witnessmark.domain.Entry;

/**
 * A change wanted: entries as they are to stand. An entry's revision is one more than that of the entry it replaces,
 * 1 for a new one; otherwise somebody changed it meanwhile and the change is refused.
 *
 * @param who who writes, as the team calls him or her
 * @param why what is being done, in words, for the history
 * @param next the entries as they are to stand, each after those it refers to
 * @param kept bytes that they name, or that entries written before name, to be kept with them
 */
public record Change(String who, String why, List<? extends Entry<?>> next, List<Kept> kept) {
    public Change {
        next = List.copyOf(next);
        kept = List.copyOf(kept);
        if (next.isEmpty() && kept.isEmpty()) {
            throw new IllegalArgumentException("a change changes something");
        }
    }

    /** A change with nothing to be kept beside its entries. */
    public Change(String who, String why, List<? extends Entry<?>> next) {
        this(who, why, next, List.of());
    }
}
