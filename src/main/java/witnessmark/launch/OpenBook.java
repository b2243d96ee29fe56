package witnessmark.launch;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.Desk;
import witnessmark.logbook.SampleSeason;

/**
 * A logbook on the desk.
 *
 * @param desk what the window works on
 * @param sampleFolder the sample's season folder, or null for a team's own logbook
 * @param season tells the sample on, or null for a team's own logbook
 */
record OpenBook(
        Desk desk, @Nullable Path sampleFolder, @Nullable SampleSeason season) {
    boolean isSample() {
        return season != null;
    }
}
