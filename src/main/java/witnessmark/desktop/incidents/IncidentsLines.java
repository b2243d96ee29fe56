package witnessmark.desktop.incidents;

import java.util.List;

/**
 * The list in words.
 *
 * @param day the day looked at
 * @param open how many are open
 * @param all the open ones first, each the latest first
 */
record IncidentsLines(String day, int open, List<IncidentLine> all) {
    IncidentsLines {
        all = List.copyOf(all);
    }
}
