package witnessmark.logbook.port;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import witnessmark.outcome.Outcome;

/** Writes calendars that other programs read. */
public interface CalendarFiles {
    /**
     * Writes a calendar file, or puts it in the place of one that was there. A file that is no calendar stays.
     *
     * @param made when it was worked out
     * @return how many entries were written
     */
    Outcome<Integer> write(List<CalendarEntry> entries, Instant made, Path file);
}
