package witnessmark.logbook.port;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * One entry of a calendar file, in words.
 *
 * @param id the same for the same thing at every writing, so that a calendar that reads the file again replaces it
 * @param title what it is
 * @param where where it is; empty when nowhere in particular
 * @param note all else
 * @param first its day, or the first of them
 * @param last its last day
 * @param at when it begins, or null when it is of whole days
 * @param lasts how long it takes from there, or null when that is not known
 */
public record CalendarEntry(
        String id,
        String title,
        String where,
        String note,
        LocalDate first,
        LocalDate last,
        @Nullable Moment at,
        @Nullable RunningTime lasts) {
    public CalendarEntry {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("a thing ends after it begins");
        }
    }
}
