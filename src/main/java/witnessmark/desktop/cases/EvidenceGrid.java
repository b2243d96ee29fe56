package witnessmark.desktop.cases;

import com.formdev.flatlaf.util.UIScale;
import java.awt.FontMetrics;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import witnessmark.desktop.form.Cut;

/** Where everything of the table lies for a width: findings at the left, a column for each cause, never wider than that. */
final class EvidenceGrid {
    private static final int LEAST_NAMES = 120;
    private static final int USUAL_NAMES = 196;
    private static final int MOST_NAMES = 420;
    private static final int USUAL_COLUMN = 108;
    private static final int MOST_COLUMN = 190;
    /** So wide at least, as long as there is room for the names. */
    private static final int TIGHT_COLUMN = 46;

    private static final int WIDE_COLUMN = 80;
    private static final int NARROW_COLUMN = 42;
    private static final int WORDS_ROWS = 4;
    private static final int STATEMENT_ROWS = 4;

    private final EvidenceLines lines;
    private final FontMetrics text;
    private final FontMetrics small;
    private final double column;
    private final double names;
    private final double head;
    private final List<Double> tops = new ArrayList<>();

    EvidenceGrid(EvidenceLines lines, FontMetrics text, FontMetrics small, int width) {
        this.lines = lines;
        this.text = text;
        this.small = small;
        int many = Math.max(1, lines.heads().size());
        double wanted = Math.min(
                UIScale.scale(MOST_NAMES),
                Math.max(UIScale.scale(USUAL_NAMES), width - many * (double) UIScale.scale(USUAL_COLUMN)));
        double usual = (width - wanted) / many;
        double least = (width - UIScale.scale(LEAST_NAMES)) / (double) many;
        this.column = Math.max(
                0, Math.min(UIScale.scale(MOST_COLUMN), Math.max(usual, Math.min(least, UIScale.scale(TIGHT_COLUMN)))));
        this.names = width - column * lines.heads().size();
        int statement = wide()
                ? lines.heads().stream()
                        .mapToInt(each -> statement(each).size())
                        .max()
                        .orElse(0)
                : 0;
        this.head = text.getHeight() + (statement + 2) * small.getHeight() + shape() + gap() * 4;
        double y = head;
        for (EvidenceLines.Row row : lines.rows()) {
            tops.add(y);
            y += text.getHeight() + Math.max(1, words(row).size()) * small.getHeight() + gap() * 2;
        }
        for (int i = 0; i < 2; i++) {
            tops.add(y);
            y += 2 * small.getHeight() + gap() * 2;
        }
        tops.add(y);
    }

    static double gap() {
        return UIScale.scale(4);
    }

    static double shape() {
        return UIScale.scale(10);
    }

    /** Whether the statement of a cause has room in its column; else its number stands for it. */
    boolean wide() {
        return column >= UIScale.scale(WIDE_COLUMN);
    }

    /** Whether a word has room beside its shape; else a letter stands there. */
    boolean words() {
        return column >= UIScale.scale(NARROW_COLUMN);
    }

    double height() {
        return tops.get(tops.size() - 1);
    }

    double headHeight() {
        return head;
    }

    double names() {
        return names;
    }

    double column() {
        return column;
    }

    /** How many rows there are: findings, then how sure, then tests. */
    int rows() {
        return tops.size() - 1;
    }

    double top(int row) {
        return tops.get(row);
    }

    Rectangle2D cell(int row, int at) {
        return new Rectangle2D.Double(left(at), tops.get(row), column, tops.get(row + 1) - tops.get(row));
    }

    double left(int at) {
        return names + at * column;
    }

    /** The row at a height; −1 for the head or below all of them. */
    int rowAt(double y) {
        for (int i = 0; i < rows(); i++) {
            if (y >= tops.get(i) && y < tops.get(i + 1)) {
                return i;
            }
        }
        return -1;
    }

    /** The column at a place; −1 for the names. */
    int columnAt(double x) {
        return x < names || column <= 0 ? -1 : Math.min(lines.heads().size() - 1, (int) ((x - names) / column));
    }

    List<String> statement(EvidenceLines.Head of) {
        return wrapped(of.statement(), small, column - 2 * gap(), STATEMENT_ROWS);
    }

    List<String> words(EvidenceLines.Row row) {
        return wrapped(row.words(), small, names - 2 * gap(), WORDS_ROWS);
    }

    String lead(EvidenceLines.Row row) {
        double day = small.stringWidth(row.day()) + gap() * 3;
        return Cut.to(row.lead(), text, names - day);
    }

    /** As many rows as there may be; the last is cut where there is more. */
    static List<String> wrapped(String words, FontMetrics metrics, double width, int most) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (String word : words.split(" ")) {
            String longer = row.length() == 0 ? word : row + " " + word;
            if (row.length() > 0 && rows.size() < most - 1 && metrics.stringWidth(longer) > width) {
                rows.add(row.toString());
                row.setLength(0);
                row.append(word);
            } else {
                row.setLength(0);
                row.append(longer);
            }
        }
        rows.add(row.toString());
        return rows.stream().map(each -> Cut.to(each, metrics, width)).toList();
    }
}
