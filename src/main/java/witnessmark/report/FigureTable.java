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

/** A table of figures, each under the other on the right of its column; heading and columns are on every page it is on. */
final class FigureTable {
    /** Between what a line is for and what else is said of it. */
    private static final String BETWEEN = "   ";

    /** Tables of no more rows than this go on to the next page whole. */
    private static final int KEPT_TOGETHER = 26;

    private final Lettering letters;
    private final Section section;
    private final FigureWidths widths;

    /** @param width of the page between its margins, in points */
    FigureTable(Lettering letters, float width, Section section) {
        this.letters = letters;
        this.section = section;
        this.widths = new FigureWidths(letters, width, section);
    }

    PdfPTable table() {
        List<Column> columns = section.columns();
        PdfPTable table = SheetCells.table(widths.all());
        table.setSpacingBefore(14);
        table.setHeaderRows(2);
        table.setSplitLate(true);
        table.setKeepTogether(section.rows().size() <= KEPT_TOGETHER);
        PdfPCell heading = SheetCells.plain(letters.set(section.heading(), Style.HEADING));
        heading.setColspan(columns.size());
        heading.setPaddingLeft(0);
        heading.setPaddingBottom(2);
        table.addCell(heading);
        for (int at = 0; at < columns.size(); at++) {
            table.addCell(title(at));
        }
        for (Row row : section.rows()) {
            for (int at = 0; at < columns.size(); at++) {
                table.addCell(cell(row, at));
            }
        }
        section.notes().forEach(note -> table.addCell(note(note)));
        return table;
    }

    private PdfPCell title(int at) {
        Column column = section.columns().get(at);
        PdfPCell title = new SheetCells(letters).heading(column.title(), Style.SMALL);
        title.setPaddingRight(widths.gap(at));
        title.setHorizontalAlignment(side(column));
        return title;
    }

    private PdfPCell note(String words) {
        PdfPCell note = SheetCells.plain(letters.set(words, Style.PLAIN));
        note.setColspan(section.columns().size());
        note.setPaddingLeft(0);
        note.setPaddingTop(3);
        return note;
    }

    private PdfPCell cell(Row row, int at) {
        Column column = section.columns().get(at);
        Cell cell = row.cells().get(at);
        PdfPCell shown = new PdfPCell();
        shown.setPaddingTop(0);
        shown.setPaddingBottom(3.5f);
        shown.setPaddingLeft(0);
        shown.setPaddingRight(widths.gap(at));
        if (column.kind() == Kind.RUNNING_ON) {
            shown.addElement(runningOn(cell));
        } else {
            add(shown, row, column, cell);
        }
        if (cell.bar() > 0) {
            shown.setCellEvent(new FigureBar(cell.bar(), widths.gap(at)));
        }
        return switch (row.weight()) {
            case LINE -> SheetCells.underlined(shown);
            case SUM -> SheetCells.summed(shown);
            case TOTAL -> SheetCells.totalled(shown);
        };
    }

    private void add(PdfPCell shown, Row row, Column column, Cell cell) {
        for (int line = 0; line < cell.lines().size(); line++) {
            Paragraph set =
                    new Paragraph(letters.set(cell.lines().get(line), style(row, column, line), widths.scale()));
            set.setAlignment(side(column));
            shown.addElement(set);
        }
    }

    private Paragraph runningOn(Cell cell) {
        Paragraph all = new Paragraph();
        all.setLeading(Style.FIRM.size() * widths.scale() * Lettering.LINE);
        for (int at = 0; at < cell.lines().size(); at++) {
            String words =
                    at == 0 ? cell.lines().get(at) : BETWEEN + cell.lines().get(at);
            all.add(letters.set(words, at == 0 ? Style.FIRM : Style.SMALL, widths.scale()));
        }
        return all;
    }

    private static int side(Column column) {
        return column.kind() == Kind.FIGURE ? Element.ALIGN_RIGHT : Element.ALIGN_LEFT;
    }

    /** How a line of a cell is set. */
    static Style style(Row row, Column column, int line) {
        if (row.weight() != Weight.LINE) {
            return Style.FIRM;
        }
        if (column.kind() == Kind.NAME) {
            return line == 0 ? Style.FIRM : Style.SMALL;
        }
        return Style.PLAIN;
    }
}
