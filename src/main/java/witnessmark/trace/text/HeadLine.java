package witnessmark.trace.text;

import java.util.List;
import java.util.Optional;

/**
 * What a line above the headings says: a name and its value. They are parted as the table's cells are, or by whatever mark comes
 * first, since a logger may write its head otherwise than its table.
 *
 * @param name without marks about it
 * @param value without quotes and what fills the line up
 */
record HeadLine(String name, String value) {
    /** What parts cells, of which a comma is also in names, figures and sentences. */
    private static final String CELLS = ";\t|,";

    private static final String SAYS = ":=";

    /**
     * @param line without what marks it as a comment
     * @param delimiter of the table, a space for any run of them, 0 for none
     * @return empty where it says nothing
     */
    static Optional<HeadLine> of(String line, char delimiter) {
        String text = unfilled(line, delimiter);
        boolean sure = delimiter != ',' && isOfCells(delimiter);
        Optional<HeadLine> asTable = sure ? of(HeadLines.cells(text, delimiter)) : Optional.empty();
        return asTable.or(() -> byFirstMark(text, delimiter));
    }

    /** Without the delimiters that make it as wide as the table. */
    private static String unfilled(String line, char delimiter) {
        int end = line.length();
        while (end > 0 && (line.charAt(end - 1) == delimiter || line.charAt(end - 1) == ' ')) {
            end--;
        }
        return line.substring(0, end);
    }

    private static Optional<HeadLine> byFirstMark(String line, char delimiter) {
        String text = firstMark(line) < 0 ? line.replace("\"", "") : line; // all of it in one pair of quotes
        int at = firstMark(text);
        if (at < 0) {
            return delimiter == ' ' ? of(HeadLines.cells(text, ' ')) : Optional.empty();
        }
        String name = text.substring(0, at);
        String value = text.substring(at + 1).stripLeading();
        char mark = text.charAt(at);
        if (!isOfCells(mark) && !value.isEmpty() && isOfCells(value.charAt(0))) { // Car:;57
            mark = value.charAt(0);
            value = value.substring(1);
        }
        char end = isOfCells(mark) ? mark : delimiter;
        return made(name, isOfCells(end) ? HeadLines.cells(value, end).get(0) : value);
    }

    private static Optional<HeadLine> of(List<String> cells) {
        return cells.size() < 2 ? Optional.empty() : made(cells.get(0), cells.get(1));
    }

    private static Optional<HeadLine> made(String name, String value) {
        HeadLine made = new HeadLine(
                name.replace("\"", "").replace(":", "").strip(),
                value.replace("\"", "").strip());
        return made.name.isEmpty() || made.value.isEmpty() ? Optional.empty() : Optional.of(made);
    }

    private static int firstMark(String line) {
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            quoted ^= c == '"';
            if (!quoted && (isOfCells(c) || SAYS.indexOf(c) >= 0)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isOfCells(char c) {
        return c != 0 && CELLS.indexOf(c) >= 0;
    }
}
