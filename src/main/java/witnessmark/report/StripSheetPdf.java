package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.ArrayList;
import java.util.List;
import witnessmark.report.Lettering.Style;
import witnessmark.wording.Texts;

/** Lays the report of a strip out on pages. The same sheet always gives the same bytes. */
public final class StripSheetPdf {
    /** Lines to write on for what else is seen. */
    private static final int LINES = 3;

    private static final float TO_WRITE = 20;

    private final SheetPages pages;

    /** @param texts what every sheet says at its edges */
    public StripSheetPdf(Texts texts) {
        this.pages = new SheetPages(texts);
    }

    /** The pages of a sheet. */
    public Pdf of(StripSheet sheet) {
        return pages.of(
                new SheetEdges(
                        sheet.title(), sheet.logbook(), sheet.day(), sheet.printed(), sheet.made(), sheet.caution()),
                (letters, width) -> content(sheet, letters, width));
    }

    private static List<Element> content(StripSheet sheet, Lettering letters, float width) {
        SheetCells cells = new SheetCells(letters);
        StripLinesTable lines = new StripLinesTable(letters, width, sheet.titles());
        List<Element> content = new ArrayList<>(cells.top(sheet.title(), sheet.board(), sheet.under(), width));
        content.add(grades(sheet, letters, width));
        sheet.areas().forEach(area -> content.add(lines.area(area)));
        sheet.tables().forEach(section -> content.add(new FigureTable(letters, width, section).table()));
        if (!sheet.other().isEmpty()) {
            content.add(toWriteOn(sheet.other(), cells, width));
        }
        if (sheet.byHand() != null) {
            content.add(new BuildBoxes(letters, width).byHand(sheet.byHand()));
        }
        return content;
    }

    /** What the shapes mean, each with its figure and word. */
    private static PdfPTable grades(StripSheet sheet, Lettering letters, float width) {
        float[] widths = new float[sheet.grades().size()];
        float used = 0;
        for (int i = 0; i < widths.length; i++) {
            widths[i] =
                    HowOnPaper.SIDE + 18 + letters.width(sheet.grades().get(i).word(), Style.PLAIN);
            used += widths[i];
        }
        widths[widths.length - 1] += Math.max(0, width - used);
        PdfPTable table = SheetCells.table(widths);
        table.setSpacingBefore(4);
        for (StripSheet.Grade grade : sheet.grades()) {
            PdfPCell cell = SheetCells.plain(letters.set(grade.word(), Style.PLAIN));
            cell.setCellEvent(new HowOnPaper(grade.how(), false));
            cell.setPaddingLeft(HowOnPaper.SIDE + 5);
            cell.setPaddingTop(1);
            table.addCell(cell);
        }
        return table;
    }

    private static PdfPTable toWriteOn(String heading, SheetCells cells, float width) {
        PdfPTable table = SheetCells.table(width);
        table.setSpacingBefore(12);
        table.setKeepTogether(true);
        table.addCell(cells.heading(heading, Style.HEADING));
        for (int i = 0; i < LINES; i++) {
            PdfPCell line = new PdfPCell();
            line.setMinimumHeight(TO_WRITE);
            table.addCell(SheetCells.underlined(line));
        }
        return table;
    }
}
