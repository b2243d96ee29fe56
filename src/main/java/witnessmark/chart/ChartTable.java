package witnessmark.chart;

import java.util.List;
import java.util.StringJoiner;

/**
 * The numbers of a chart as rows of text.
 *
 * @param headings with units
 * @param rows as many cells as there are headings
 */
public record ChartTable(List<String> headings, List<List<String>> rows) {
    public ChartTable {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException("a row has " + row.size() + " cells under " + headings.size());
            }
        }
    }

    /** Headings and rows, tabs between cells: what a spreadsheet takes. */
    public String tabbed() {
        StringJoiner lines = new StringJoiner("\n", "", "\n");
        lines.add(String.join("\t", headings));
        rows.forEach(row -> lines.add(String.join("\t", row)));
        return lines.toString();
    }
}
