package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import witnessmark.chart.DrawnTraceRows;
import witnessmark.chart.TraceRows;
import witnessmark.chart.TraceStyle;
import witnessmark.report.Lettering.Style;
import witnessmark.wording.Texts;

/** Lays the pages of a trace out. The same sheet always gives the same bytes. */
public final class TraceSheetPdf {
    /** The height of a row, in points, and what the axis of time takes. */
    private static final float ROW = 76;

    private static final float AXIS = 24;
    /** No more of a page is taken by the curves. */
    private static final float MOST = 600;
    /** Curves are drawn to a third of a point, as fine as paper shows. */
    private static final int FINE = 3;

    private final SheetPages pages;

    /** @param texts what every sheet says at its edges */
    public TraceSheetPdf(Texts texts) {
        this.pages = new SheetPages(texts);
    }

    /** The pages of a sheet. */
    public Pdf of(TraceSheet sheet) {
        return pages.of(
                new SheetEdges(
                        sheet.title(), sheet.logbook(), sheet.day(), sheet.printed(), sheet.made(), sheet.caution()),
                (letters, width) -> content(sheet, letters, width));
    }

    private static List<Element> content(TraceSheet sheet, Lettering letters, float width) {
        SheetCells cells = new SheetCells(letters);
        List<Element> content = new ArrayList<>();
        content.addAll(cells.top(sheet.title(), sheet.board(), sheet.under(), width));
        content.add(curves(sheet, letters, width));
        sheet.tables().forEach(section -> content.add(new FigureTable(letters, width, section).table()));
        return content;
    }

    private static PdfPTable curves(TraceSheet sheet, Lettering letters, float width) {
        TraceRows rows = sheet.rows().spelled(text -> letters.printable(text, letters.typeface(text, Style.PLAIN)));
        PdfPTable table = SheetCells.table(width);
        table.setSpacingBefore(4);
        PdfPCell cell = SheetCells.plain(letters.set("", Style.PLAIN));
        cell.setFixedHeight(Math.min(MOST, AXIS + ROW * Math.max(1, rows.rows().size())));
        cell.setCellEvent(new OnPaper(letters, (g, room) -> {
            DrawnTraceRows drawn = new DrawnTraceRows(rows, TraceStyle.onPaper(OnPaper.style(FINE)));
            drawn.seen().see(sheet.from(), sheet.until());
            g.scale(1.0 / FINE, 1.0 / FINE);
            drawn.draw(g, new Rectangle2D.Double(0, 0, FINE * room.getWidth(), FINE * room.getHeight()), null);
        }));
        table.addCell(cell);
        return table;
    }
}
