package witnessmark.desktop.strip;

import com.formdev.flatlaf.util.UIScale;
import java.awt.FontMetrics;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Where everything of the table of a strip lies for a width. */
final class StripGrid {
    private static final int LEAST_NAMES = 120;
    private static final int MOST_NAMES = 280;
    private static final int USUAL_COLUMN = 88;
    private static final int MOST_COLUMN = 140;

    private final StripLines lines;
    private final FontMetrics text;
    private final FontMetrics small;
    private final double names;
    private final double column;
    private final List<Double> tops = new ArrayList<>();
    private final double height;

    StripGrid(StripLines lines, FontMetrics text, FontMetrics small, int width) {
        this.lines = lines;
        this.text = text;
        this.small = small;
        int many = Math.max(1, lines.heads().size());
        double room = width - many * (double) UIScale.scale(USUAL_COLUMN);
        double wanted = Math.max(UIScale.scale(LEAST_NAMES), Math.min(UIScale.scale(MOST_NAMES), room));
        this.column = Math.max(0, Math.min(UIScale.scale(MOST_COLUMN), (width - wanted) / many));
        this.names = width - column * lines.heads().size();
        double y = headHeight();
        for (StripLines.Row row : lines.rows()) {
            y += areaHeight(row);
            tops.add(y);
            y += rowHeight();
        }
        this.height = y;
    }

    static double gap() {
        return UIScale.scale(4);
    }

    static double shape() {
        return UIScale.scale(11);
    }

    double headHeight() {
        return text.getHeight() + 2 * gap();
    }

    double areaHeight(StripLines.Row row) {
        return row.area().isEmpty() ? 0 : text.getHeight() + 3 * gap();
    }

    double rowHeight() {
        return text.getHeight() + small.getHeight() + 2 * gap();
    }

    double height() {
        return height;
    }

    double names() {
        return names;
    }

    double column() {
        return column;
    }

    double top(int row) {
        return tops.get(row);
    }

    double left(int at) {
        return names + at * column;
    }

    Rectangle2D cell(int row, int at) {
        return new Rectangle2D.Double(left(at), tops.get(row), column, rowHeight());
    }

    /** The row at a height; −1 for the head, for what stands over an area, and below all of them. */
    int rowAt(double y) {
        for (int i = 0; i < tops.size(); i++) {
            if (y >= tops.get(i) && y < tops.get(i) + rowHeight()) {
                return i;
            }
        }
        return -1;
    }

    /** The column at a place; −1 for the names. */
    int columnAt(double x) {
        return x < names || column <= 0 ? -1 : Math.min(lines.heads().size() - 1, (int) ((x - names) / column));
    }
}
