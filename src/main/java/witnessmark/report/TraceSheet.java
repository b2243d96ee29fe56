package witnessmark.report;

import java.time.Instant;
import java.util.List;
import witnessmark.chart.TraceRows;

/**
 * What stands on the pages of a trace, in words: the stretch that was in sight, its marks, its figures.
 *
 * @param name what the file is named after
 * @param title what it is: "Trace of K03"
 * @param board on the right of the board: which run
 * @param under sentences under the board: what it shows, strongest; the file; which stretch
 * @param logbook whose it is
 * @param day the day looked at, in words
 * @param printed when it was printed, in words
 * @param made the same moment, for the file
 * @param caution what nobody may take it for, on every page
 * @param rows its curves, without a heading of their own
 * @param from the beginning of the stretch, seconds
 * @param until its end, seconds
 * @param tables marks and figures
 */
public record TraceSheet(
        String name,
        String title,
        String board,
        List<String> under,
        String logbook,
        String day,
        String printed,
        Instant made,
        String caution,
        TraceRows rows,
        double from,
        double until,
        List<SeasonSheet.Section> tables) {
    public TraceSheet {
        under = List.copyOf(under);
        tables = List.copyOf(tables);
        if (!(until > from)) {
            throw new IllegalArgumentException("a stretch ends after it begins");
        }
    }
}
