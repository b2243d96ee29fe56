package witnessmark.report;

import java.util.List;
import witnessmark.report.Lettering.Style;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Kind;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;

/**
 * How wide the columns of a section are: figures and marks take what they need, so that none is cut or broken, and words
 * share what is left. Where that would be too little, all letters of the section are smaller.
 */
final class FigureWidths {
    private static final float GAP = 9;

    /** Of the width of the page, kept for words. */
    private static final float WORDS = 0.22f;

    /** Of a title's width: with room for uneven words it takes no more than two lines. */
    private static final float TWO_LINES = 0.65f;

    private final Lettering letters;
    private final float width;
    private final Section section;
    private final float scale;

    /** @param width of the page between its margins, in points */
    FigureWidths(Lettering letters, float width, Section section) {
        this.letters = letters;
        this.width = width;
        this.section = section;
        float fitted = 0;
        for (int at = 0; at < section.columns().size(); at++) {
            fitted += isFitted(at) ? needed(at) + gap(at) : 0;
        }
        this.scale = Math.min(1, width * (1 - WORDS) / Math.max(1, fitted));
    }

    /** Of the usual size of letters: 1, or less where figures are very long. */
    float scale() {
        return scale;
    }

    /** From a column to the next, in points. */
    float gap(int at) {
        return at == section.columns().size() - 1 ? 0 : GAP;
    }

    /** In points, together the width of the page. */
    float[] all() {
        List<Column> columns = section.columns();
        float[] widths = new float[columns.size()];
        float left = width;
        int shares = 0;
        for (int at = 0; at < widths.length; at++) {
            widths[at] = isFitted(at) ? needed(at) * scale + gap(at) : 0;
            left -= widths[at];
            shares += columns.get(at).share();
        }
        for (int at = 0; at < widths.length; at++) {
            widths[at] +=
                    shares == 0 ? left / widths.length : left * columns.get(at).share() / shares;
        }
        return widths;
    }

    private boolean isFitted(int at) {
        Kind kind = section.columns().get(at).kind();
        return kind == Kind.FIGURE || kind == Kind.MARK;
    }

    /** The longest cell of a column or word over it, at full size. */
    private float needed(int at) {
        Column column = section.columns().get(at);
        float needed = TWO_LINES * letters.width(column.title(), Style.SMALL);
        for (String word : column.title().split(" ")) {
            needed = Math.max(needed, letters.width(word, Style.SMALL));
        }
        for (Row row : section.rows()) {
            List<String> lines = row.cells().get(at).lines();
            for (int line = 0; line < lines.size(); line++) {
                needed = Math.max(needed, letters.width(lines.get(line), FigureTable.style(row, column, line)));
            }
        }
        return needed + 1;
    }
}
