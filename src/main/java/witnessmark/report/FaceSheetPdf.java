package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import witnessmark.chart.DrawnFaceMap;
import witnessmark.chart.FaceMap;
import witnessmark.chart.FaceMapStyle;
import witnessmark.chart.FacePlane;
import witnessmark.report.Lettering.Style;
import witnessmark.wording.Texts;

/** Lays the page of a face out. The same sheet always gives the same bytes. */
public final class FaceSheetPdf {
    /** Above and below the face, for the words of its edges, in points. */
    private static final float ROOM = 16;

    private static final float LEGEND = 110;
    private static final float LEGEND_HIGH = 9;

    private final SheetPages pages;

    /** @param texts what every sheet says at its edges */
    public FaceSheetPdf(Texts texts) {
        this.pages = new SheetPages(texts);
    }

    /** The pages of a sheet. */
    public Pdf of(FaceSheet sheet) {
        return pages.of(
                new SheetEdges(
                        sheet.title(), sheet.logbook(), sheet.day(), sheet.printed(), sheet.made(), sheet.caution()),
                (letters, width) -> content(sheet, letters, width));
    }

    private static List<Element> content(FaceSheet sheet, Lettering letters, float width) {
        SheetCells cells = new SheetCells(letters);
        List<Element> content = new ArrayList<>();
        content.addAll(cells.top(sheet.title(), sheet.board(), sheet.under(), width));
        FaceSheet.Drawing drawing = sheet.drawing();
        if (drawing != null) {
            content.add(map(drawing, letters, width));
            content.add(legend(drawing, letters, width));
        }
        if (sheet.zones() != null) {
            content.add(new BuildFindings(letters, width).group(sheet.zones()));
        }
        sheet.tables().forEach(section -> content.add(new FigureTable(letters, width, section).table()));
        sheet.effect().forEach(line -> content.add(new Paragraph(letters.set(line, Style.PLAIN))));
        return content;
    }

    private static PdfPTable map(FaceSheet.Drawing drawing, Lettering letters, float width) {
        FaceMap map = drawing.map().spelled(text -> letters.printable(text, letters.typeface(text, Style.FIRM)));
        FaceMapStyle style = FaceMapStyle.onPaper(OnPaper.style());
        float high = (float) (width * map.edges().width() / map.edges().length());
        PdfPTable table = SheetCells.table(width);
        table.setSpacingBefore(4);
        PdfPCell cell = SheetCells.plain(letters.set("", Style.PLAIN));
        cell.setFixedHeight(high + 2 * ROOM);
        cell.setCellEvent(new OnPaper(
                letters,
                (g, room) -> new DrawnFaceMap(
                                map,
                                new FacePlane(
                                        map.edges(),
                                        drawing.exhaustBelow(),
                                        drawing.frontLeft(),
                                        new Rectangle2D.Double(
                                                2, ROOM, room.getWidth() - 4, room.getHeight() - 2 * ROOM)),
                                style)
                        .draw(g, -1)));
        table.addCell(cell);
        return table;
    }

    private static PdfPTable legend(FaceSheet.Drawing drawing, Lettering letters, float width) {
        PdfPTable table = SheetCells.table(LEGEND, width - LEGEND);
        FaceMapStyle style = FaceMapStyle.onPaper(OnPaper.style());
        boolean filled = drawing.map().shading() != null;
        PdfPCell levels = SheetCells.plain(letters.set("", Style.PLAIN));
        if (filled) {
            levels.setCellEvent(new OnPaper(
                    letters,
                    (g, room) ->
                            DrawnFaceMap.legend(g, style, new Rectangle2D.Double(2, 3, LEGEND - 14, LEGEND_HIGH))));
        }
        PdfPCell said = SheetCells.plain(letters.set(drawing.legend(), Style.SMALL));
        said.addElement(new Paragraph(letters.set(drawing.legend(), Style.SMALL)));
        said.addElement(new Paragraph(letters.set(drawing.turned(), Style.SMALL)));
        said.setPaddingTop(0);
        if (!filled) {
            said.setColspan(2);
            said.setPaddingLeft(0);
        } else {
            table.addCell(levels);
        }
        table.addCell(said);
        return table;
    }
}
