package witnessmark.trace.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where the figures of a file stand.
 *
 * @param delimiter between cells, 0 for a single column
 * @param first the line of the first row of figures
 * @param width cells of a row
 * @param rows those rows, as cells
 */
record Table(char delimiter, int first, int width, List<List<String>> rows) {
    /** By how much they are trusted where the lines read alike with several. */
    private static final char[] DELIMITERS = {'\t', ';', '|', ',', ' '};

    private static final Pattern NUMBER = Pattern.compile(
            "[-+]?(?:[1-9]\\d{0,2}(?:[ \u00a0\u202f'\u2019.,]\\d{3})+|\\d+)?(?:[.,]\\d*)?(?:[eE][-+]?\\d{1,3})?");
    private static final int LONGEST = 48;

    /** The table that most lines make; null where there is none. */
    static @Nullable Table in(List<String> lines) {
        Table best = null;
        for (char delimiter : DELIMITERS) {
            Table table = with(lines, delimiter);
            if (table != null && table.width > 1 && (best == null || table.clearlyBetter(best))) {
                best = table;
            }
        }
        return best != null ? best : with(lines, (char) 0);
    }

    private boolean clearlyBetter(Table other) {
        return rows.size() * 100L > other.rows.size() * 110L;
    }

    private static @Nullable Table with(List<String> lines, char delimiter) {
        Map<Integer, Integer> widths = new HashMap<>();
        List<List<String>> cells = new ArrayList<>();
        for (String line : lines) {
            List<String> row = HeadLines.cells(line, delimiter);
            boolean figures = isRow(row);
            cells.add(figures ? row : List.of());
            if (figures) {
                widths.merge(row.size(), 1, Integer::sum);
            }
        }
        int width = widths.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(0);
        int first = -1;
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            List<String> row = cells.get(i);
            if (!row.isEmpty() && row.size() == width) {
                first = first < 0 ? i : first;
                rows.add(row);
            }
        }
        return rows.isEmpty() ? null : new Table(delimiter, first, trimmed(width, rows), rows);
    }

    /** A delimiter at the end of every row makes no column. */
    private static int trimmed(int width, List<List<String>> rows) {
        boolean bare =
                width > 2 && rows.stream().allMatch(row -> row.get(width - 1).isEmpty());
        return bare ? width - 1 : width;
    }

    /** More figures than words: a name and its value is none. */
    private static boolean isRow(List<String> row) {
        int figures = 0;
        int texts = 0;
        for (String cell : row) {
            if (isFigure(cell)) {
                figures++;
            } else if (!cell.isEmpty()) {
                texts++;
            }
        }
        return figures > texts;
    }

    /** A number under any decimal mark, a time or a date. */
    static boolean isFigure(String cell) {
        return isNumber(cell) || isTime(cell);
    }

    static boolean isNumber(String cell) {
        if (cell.isEmpty() || cell.length() > LONGEST) {
            return false;
        }
        char first = cell.charAt(0);
        if (Character.isLetter(first) && first != 'e' && first != 'E') {
            return false; // most words are told by their first letter
        }
        if (!isPlain(cell) && !NUMBER.matcher(cell).matches()) {
            return false;
        }
        for (int i = 0; i < cell.length(); i++) {
            if (cell.charAt(i) >= '0' && cell.charAt(i) <= '9') {
                return true;
            }
        }
        return false;
    }

    /** Whether there is nothing but a sign, digits and one mark, which is by far the most usual. */
    private static boolean isPlain(String cell) {
        int marks = 0;
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            boolean sign = i == 0 && (c == '-' || c == '+');
            boolean mark = (c == '.' || c == ',') && marks++ == 0;
            if (!sign && !mark && (c < '0' || c > '9')) {
                return false;
            }
        }
        return true;
    }

    static boolean isTime(String cell) {
        return !cell.isEmpty()
                && cell.length() <= LONGEST
                && (TimeCells.isClock(cell)
                        || TimeCells.dateTime(cell, true) != null
                        || TimeCells.date(cell, true) != null);
    }

    /** What stands in a column. */
    List<String> column(int column) {
        return rows.stream().map(row -> row.get(column)).toList();
    }
}
