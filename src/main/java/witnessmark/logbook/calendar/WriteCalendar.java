package witnessmark.logbook.calendar;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.CalendarEntry;
import witnessmark.logbook.port.CalendarFiles;
import witnessmark.outcome.Outcome;

/** Writes what lies on the days to come as a calendar file. Reads and computes; off the event thread. */
public final class WriteCalendar {
    private final CalendarFiles files;
    private final Function<Dated, CalendarEntry> words;

    /** @param words says each thing as an entry of a calendar */
    public WriteCalendar(CalendarFiles files, Function<Dated, CalendarEntry> words) {
        this.files = files;
        this.words = words;
    }

    /**
     * Writes the calendar as of the day looked at.
     *
     * @return how many entries it has
     */
    public Outcome<Integer> write(Desk desk, Path file) {
        List<CalendarEntry> entries =
                SeeCalendar.of(desk.view()).stream().map(words).toList();
        return files.write(entries, desk.today().now(), file);
    }
}
