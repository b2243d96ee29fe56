package witnessmark.exchange;

import java.util.ArrayList;
import java.util.List;

/** A text table as rows of fields, read and written by a few lines of their own after RFC 4180. */
final class Grid {
    private final List<List<String>> rows;

    private Grid(List<List<String>> rows) {
        this.rows = rows;
    }

    /** Reads well-formed text; what is not well-formed is read somehow. */
    static Grid parse(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = text.startsWith("\uFEFF") ? 1 : 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!quoted && c == '\r') {
                if (i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                    continue;
                }
                c = '\n';
            }
            if (quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                field.append('"');
                i++;
            } else if (c == '"' && (quoted || field.length() == 0)) {
                quoted = !quoted;
            } else if (quoted || (c != ',' && c != '\n')) {
                field.append(c);
            } else {
                row.add(field.toString());
                field.setLength(0);
                if (c == '\n') {
                    rows.add(row);
                    row = new ArrayList<>();
                }
            }
        }
        if (field.length() > 0 || !row.isEmpty()) {
            row.add(field.toString());
            rows.add(row);
        }
        return new Grid(rows);
    }

    /** The rows, heading first; they may be changed. */
    List<List<String>> rows() {
        return rows;
    }

    int column(String heading) {
        int at = rows.get(0).indexOf(heading);
        if (at < 0) {
            throw new AssertionError("no column " + heading + " in " + rows.get(0));
        }
        return at;
    }

    /** Whether there is a heading and every row has as many fields. */
    boolean isRegular() {
        return !rows.isEmpty()
                && rows.stream().allMatch(row -> row.size() == rows.get(0).size());
    }

    /** How many rows after the heading have anything in them. */
    long filledRows() {
        return rows.stream()
                .filter(row -> row.stream().anyMatch(field -> !field.isEmpty()))
                .skip(1)
                .count();
    }

    /** The line on which a row begins, as an editor counts. */
    int line(int row) {
        return 1
                + (int) text(rows.subList(0, row), false, "\n")
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
    }

    String text() {
        return text(rows, false, "\n");
    }

    /** The same table with every field quoted or other line ends. */
    String text(boolean quoteAll, String lineEnd) {
        return text(rows, quoteAll, lineEnd);
    }

    private static String text(List<List<String>> rows, boolean quoteAll, String lineEnd) {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                text.append(i == 0 ? "" : ",").append(field(row.get(i), quoteAll));
            }
            text.append(lineEnd);
        }
        return text.toString();
    }

    private static String field(String value, boolean quote) {
        boolean needed = value.contains(",")
                || value.contains("\"")
                || value.contains("\n")
                || value.contains("\r")
                || value.startsWith(" ")
                || value.endsWith(" ");
        return quote || needed ? "\"" + value.replace("\"", "\"\"") + "\"" : value;
    }
}
