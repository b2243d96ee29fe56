package witnessmark.logbook.port;

import java.nio.file.Path;
import java.util.List;
import witnessmark.outcome.Outcome;

/** Writes tables that spreadsheets read. */
public interface TableFiles {
    /**
     * One cell.
     *
     * @param text as it stands there
     * @param figure whether it is a figure, a date or a word of ours, which no spreadsheet takes for something else
     */
    record Cell(String text, boolean figure) {
        /** Words that people typed: a spreadsheet must not take them for a formula. */
        public static Cell words(String text) {
            return new Cell(text, false);
        }

        /** A figure with a point before its decimals, a date as 2026-07-08. */
        public static Cell figure(String text) {
            return new Cell(text, true);
        }
    }

    /**
     * Writes a table, or puts it in the place of one that was there.
     *
     * @param headings over the columns, first among them the word by which the file is known again
     * @param rows each with a cell for each heading
     * @return how many rows were written
     */
    Outcome<Integer> write(List<String> headings, List<List<Cell>> rows, Path file);
}
