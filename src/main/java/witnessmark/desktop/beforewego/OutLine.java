package witnessmark.desktop.beforewego;

import org.jspecify.annotations.Nullable;
import witnessmark.logbook.sheets.Prefilled;

/**
 * A short report of three lines at the side of the page: a car's last run, or what an engine gained.
 *
 * @param title "Car 41, engine K03"
 * @param first "Sun 5 Jul, race 2: 27 min 42 s, 12 laps"
 * @param second "Highest 8 230 rpm, water 84 °C"
 * @param record the text of the identity of what it is about
 * @param sheet the sheet it leads to, with what is chosen there; null when it opens what it is about
 */
public record OutLine(
        String title,
        String first,
        String second,
        String record,
        @Nullable Prefilled sheet) {
    /** A report that opens what it is about. */
    OutLine(String title, String first, String second, String record) {
        this(title, first, second, record, null);
    }
}
