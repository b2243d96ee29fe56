package witnessmark.desktop.shell;

import java.util.List;
import java.util.Locale;

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

    /** Whether anything here is itself called by what was typed, as the springs are by {@code valve springs}. */
    boolean tells(String typed) {
        String word = " " + typed.toLowerCase(Locale.ROOT);
        return all.stream().anyMatch(found -> (" " + found.title().toLowerCase(Locale.ROOT)).contains(word));
    }

    boolean hasMore() {
        return all.size() > FIRST;
    }
}
