package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import witnessmark.report.Lettering.Style;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Kind;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;

/** Tables of figures: each figure under the other on the right of its column, which is as wide as the longest needs. */
final class FigureTables {
    private static final float GAP = 9;

    /** Of a title's width: with room for uneven words it takes no more than two lines. */
    private static final float TWO_LINES = 0.65f;

    /** Between what a line is for and what else is said of it. */
    private static final String BETWEEN = "   ";

    /** Tables of no more rows than this go on to the next page whole. */
    private static final int KEPT_TOGETHER = 14;

    /** As much of the width is kept for words, however long the figures are. */
    private static final float LEAST_WORDS = 0.2f;

    private final Lettering letters;
    private final SheetCells cells;
    private final float width;

    /** @param width of the page between its margins, in points */
    FigureTables(Lettering letters, float width) {
        this.letters = letters;
        this.cells = new SheetCells(letters);
        this.width = width;
    }

    /** A section; heading and columns are on every page it is on. */
    PdfPTable of(Section section) {
        List<Column> columns = section.columns();
        PdfPTable table = SheetCells.table(widths(section));
        table.setSpacingBefore(14);
        table.setHeaderRows(2);
        table.setSplitLate(true);
        table.setKeepTogether(section.rows().size() <= KEPT_TOGETHER);
        PdfPCell heading = SheetCells.plain(letters.set(section.heading(), Style.HEADING));
        heading.setColspan(columns.size());
        heading.setPaddingLeft(0);
        heading.setPaddingBottom(2);
        table.addCell(heading);
        columns.forEach(column -> table.addCell(title(column, column.equals(columns.get(columns.size() - 1)))));
        for (Row row : section.rows()) {
            for (int at = 0; at < columns.size(); at++) {
                table.addCell(cell(row, columns.get(at), row.cells().get(at), at == columns.size() - 1));
            }
        }
        section.notes().forEach(note -> table.addCell(note(note, columns.size())));
        return table;
    }

    private PdfPCell title(Column column, boolean last) {
        PdfPCell title = cells.heading(column.title(), Style.SMALL);
        title.setPaddingRight(last ? 0 : GAP);
        title.setHorizontalAlignment(column.kind() == Kind.FIGURE ? Element.ALIGN_RIGHT : Element.ALIGN_LEFT);
        return title;
    }

    private PdfPCell note(String words, int columns) {
        PdfPCell note = SheetCells.plain(letters.set(words, Style.PLAIN));
        note.setColspan(columns);
        note.setPaddingLeft(0);
        note.setPaddingTop(3);
        return note;
    }

    private PdfPCell cell(Row row, Column column, Cell cell, boolean last) {
        PdfPCell shown = new PdfPCell();
        shown.setPaddingTop(0);
        shown.setPaddingBottom(3.5f);
        shown.setPaddingLeft(0);
        shown.setPaddingRight(last ? 0 : GAP);
        if (column.kind() == Kind.RUNNING_ON) {
            shown.addElement(runningOn(cell));
        } else {
            add(shown, row, column, cell);
        }
        if (cell.bar() > 0) {
            shown.setCellEvent(new FigureBar(cell.bar(), last ? 0 : GAP));
        }
        return switch (row.weight()) {
            case LINE -> SheetCells.underlined(shown);
            case SUM -> SheetCells.summed(shown);
            case TOTAL -> SheetCells.totalled(shown);
        };
    }

    private void add(PdfPCell shown, Row row, Column column, Cell cell) {
        for (int at = 0; at < cell.lines().size(); at++) {
            Paragraph line = new Paragraph(letters.set(cell.lines().get(at), style(row, column, at)));
            line.setAlignment(column.kind() == Kind.FIGURE ? Element.ALIGN_RIGHT : Element.ALIGN_LEFT);
            shown.addElement(line);
        }
    }

    private Paragraph runningOn(Cell cell) {
        Paragraph all = new Paragraph();
        all.setLeading(Style.FIRM.size() * Lettering.LINE);
        for (int at = 0; at < cell.lines().size(); at++) {
            all.add(letters.set(at == 0 ? cell.lines().get(at) : BETWEEN + cell.lines().get(at), at == 0 ? Style.FIRM : Style.SMALL));
        }
        return all;
    }

    private static Style style(Row row, Column column, int line) {
        if (row.weight() != Weight.LINE) {
            return Style.FIRM;
        }
        if (column.kind() == Kind.NAME) {
            return line == 0 ? Style.FIRM : Style.SMALL;
        }
        return Style.PLAIN;
    }

    /** Figures take what they need, words share what is left; where that is too little, figures give way evenly. */
    private float[] widths(Section section) {
        List<Column> columns = section.columns();
        float[] widths = new float[columns.size()];
        float figures = 0;
        int shares = 0;
        for (int at = 0; at < widths.length; at++) {
            Column column = columns.get(at);
            shares += column.share();
            if (column.kind() == Kind.FIGURE) {
                widths[at] = needed(section, at) + (at == widths.length - 1 ? 0 : GAP);
                figures += widths[at];
            }
        }
        float most = shares == 0 ? width : width * (1 - LEAST_WORDS);
        float squeeze = figures > most ? most / figures : 1;
        for (int at = 0; at < widths.length; at++) {
            Column column = columns.get(at);
            widths[at] = column.kind() == Kind.FIGURE
                    ? widths[at] * squeeze
                    : (width - figures * squeeze) * column.share() / shares;
        }
        return widths;
    }

    /** The longest figure of a column, or the longest word over it. */
    private float needed(Section section, int at) {
        Column column = section.columns().get(at);
        float needed = TWO_LINES * letters.width(column.title(), Style.SMALL);
        for (String word : column.title().split(" ")) {
            needed = Math.max(needed, letters.width(word, Style.SMALL));
        }
        for (Row row : section.rows()) {
            List<String> lines = row.cells().get(at).lines();
            for (int line = 0; line < lines.size(); line++) {
                needed = Math.max(needed, letters.width(lines.get(line), style(row, column, line)));
            }
        }
        return needed + 1;
    }
}
