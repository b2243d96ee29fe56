package witnessmark.trace;

import java.util.Arrays;
import java.util.List;

/** The cells of a logger's file as they stand in it, found by their headings: what the program says is held against them. */
public final class FileCells {
    private static final String TIME = "Time [s]";

    private final List<String> headings;
    private final List<String[]> rows;

    private FileCells(List<String> headings, List<String[]> rows) {
        this.headings = headings;
        this.rows = rows;
    }

    /** Of a file with commas and points; what stands above the headings begins with {@code #}. */
    public static FileCells of(String csv) {
        List<String> lines = csv.lines().filter(line -> !line.startsWith("#")).toList();
        return new FileCells(
                List.of(lines.get(0).split(",")),
                lines.stream().skip(1).map(line -> line.split(",")).toList());
    }

    /** Seconds of each row. */
    public double[] time() {
        return column(TIME);
    }

    /** @throws IllegalArgumentException where no heading reads so */
    public double[] column(String heading) {
        int column = headings.indexOf(heading);
        if (column < 0) {
            throw new IllegalArgumentException(heading + " is none of " + headings);
        }
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
    }

    /** What the last row at a time or before it says. */
    public double at(String heading, double seconds) {
        int found = Arrays.binarySearch(time(), seconds);
        return column(heading)[found < 0 ? -found - 2 : found];
    }
}
