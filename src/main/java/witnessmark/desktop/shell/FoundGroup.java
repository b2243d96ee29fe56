package witnessmark.desktop.shell;

import java.util.List;

/**
 * What was found of one kind.
 *
 * @param heading over it
 * @param all everything, best first
 * @param showAll the words of the row that shows all of it
 */
record FoundGroup(String heading, List<Found> all, String showAll) {
    /** So many of a group are shown at first. */
    static final int FIRST = 8;

    FoundGroup {
        all = List.copyOf(all);
    }

    boolean hasMore() {
        return all.size() > FIRST;
    }
}
