package witnessmark.fit.result;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Work that would change a fit.
 *
 * @param kind which
 * @param depth what comes off a face, in nanometres; 0 where it is not a face
 * @param cuts what comes off each crown, in nanometres by cylinder; empty where it is not the crowns
 * @param gasket the design of the other gasket; empty where it is not a gasket
 */
public record Work(Kind kind, long depth, SortedMap<Integer, Long> cuts, String gasket) {
    /** What can be done on the bench. */
    public enum Kind {
        CROWN_CUT,
        DECK_SKIM,
        HEAD_SKIM,
        OTHER_GASKET
    }

    public Work {
        cuts = Collections.unmodifiableSortedMap(new TreeMap<>(cuts));
    }

    public static Work headSkim(long depth) {
        return new Work(Kind.HEAD_SKIM, depth, new TreeMap<>(), "");
    }

    public static Work deckSkim(long depth) {
        return new Work(Kind.DECK_SKIM, depth, new TreeMap<>(), "");
    }

    public static Work crownCuts(Map<Integer, Long> cuts) {
        return new Work(Kind.CROWN_CUT, 0, new TreeMap<>(cuts), "");
    }

    public static Work gasket(String design) {
        return new Work(Kind.OTHER_GASKET, 0, new TreeMap<>(), design);
    }
}
