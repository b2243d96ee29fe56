package witnessmark.report;

import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPCellEvent;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.report.Lettering.Style;
import witnessmark.wording.Texts;

/** The tables of a job sheet: one for each section, its heading on every page it is on. */
final class SheetTables {
    /** Widths in points of the columns that do not share what is left. */
    private static final float TICK = 20;

    private static final float MARK = 50;
    private static final float INITIALS = 54;

    /** Shares of what is left: what it is with its mark, how it stands, who has it in hand. */
    private static final float[] SHARES = {0.42f, 0.33f, 0.25f};

    /** Room to write, in points. */
    private static final float ROW = 25;

    private final Texts texts;
    private final Lettering letters;
    private final SheetCells cells;
    private final float width;

    /** @param width of the page between its margins, in points */
    SheetTables(Texts texts, Lettering letters, float width) {
        this.texts = texts;
        this.letters = letters;
        this.cells = new SheetCells(letters);
        this.width = width;
    }

    /** A section's rows; a row is broken over two pages only when it is longer than one. */
    PdfPTable section(JobSheet.Section section) {
        boolean marks = section.hasMarks();
        float rest = width - TICK - INITIALS;
        float what = rest * SHARES[0];
        PdfPTable table = marks
                ? SheetCells.table(TICK, MARK, what - MARK, rest * SHARES[1], rest * SHARES[2], INITIALS)
                : SheetCells.table(TICK, what, rest * SHARES[1], rest * SHARES[2], INITIALS);
        table.setSpacingBefore(12);
        table.setHeaderRows(1);
        table.setSplitLate(true);
        PdfPCell heading = cells.heading(section.heading(), Style.HEADING);
        heading.setColspan(marks ? 3 : 2);
        table.addCell(heading);
        table.addCell(cells.heading(section.stands(), Style.SMALL));
        table.addCell(cells.heading(section.hand(), Style.SMALL));
        table.addCell(cells.heading(texts.get("jobsheet.initials"), Style.SMALL));
        section.rows().forEach(row -> add(table, row, marks));
        return table;
    }

    private void add(PdfPTable table, JobSheet.Row row, boolean marks) {
        table.addCell(drawn(new TickBox(row.done())));
        if (marks) {
            table.addCell(mark(row.mark()));
        }
        PdfPCell what = rowCell();
        what.addElement(letters.set(row.what(), Style.STRONG));
        what.addElement(letters.set(row.where(), Style.PLAIN));
        table.addCell(what);
        PdfPCell stands = rowCell();
        int firm = row.mark() == null ? 0 : Math.min(1, row.stands().size());
        addLines(stands, row.stands().subList(0, firm), Style.FIRM);
        addLines(stands, row.stands().subList(firm, row.stands().size()), Style.PLAIN);
        table.addCell(stands);
        PdfPCell hand = rowCell();
        addLines(hand, row.hand(), Style.PLAIN);
        table.addCell(hand);
        table.addCell(rowCell());
    }

    private void addLines(PdfPCell cell, List<String> lines, Style style) {
        lines.forEach(line -> cell.addElement(letters.set(line, style)));
    }

    /** The mark with its word beside it: a shape never stands alone. */
    private PdfPCell mark(JobSheet.@Nullable Mark mark) {
        if (mark == null) {
            return rowCell();
        }
        PdfPCell cell = drawn(new PaperMark(mark.state()));
        cell.addElement(letters.set(mark.word(), Style.PLAIN));
        cell.setPaddingLeft(PaperMark.SIDE + 4);
        cell.setPaddingRight(2);
        return cell;
    }

    private PdfPCell drawn(PdfPCellEvent drawing) {
        PdfPCell cell = rowCell();
        cell.setCellEvent(drawing);
        return cell;
    }

    private PdfPCell rowCell() {
        PdfPCell cell = new PdfPCell();
        cell.setMinimumHeight(ROW);
        cell.setPaddingTop(1);
        cell.setPaddingBottom(5);
        cell.setPaddingLeft(0);
        cell.setPaddingRight(8);
        return SheetCells.underlined(cell);
    }
}
