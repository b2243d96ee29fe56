package witnessmark.logbook.port;

import java.util.List;

/**
 * A table as it stands in a file: no text is read as anything yet.
 *
 * @param file the file's own name
 * @param headings the headings, as many as the table has columns
 * @param rows those that have as many fields as there are headings
 * @param odd the lines of rows that have not: what a bank writes above or below its table
 */
public record StatementRows(String file, List<String> headings, List<Row> rows, List<Long> odd) {
    public StatementRows {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
        odd = List.copyOf(odd);
    }

    /**
     * One row.
     *
     * @param line the line it begins on, from 1
     * @param fields its texts without spaces around them
     */
    public record Row(long line, List<String> fields) {
        public Row {
            fields = List.copyOf(fields);
        }
    }
}
