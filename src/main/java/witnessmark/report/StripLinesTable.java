package witnessmark.report;

import com.lowagie.text.Paragraph;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.GrayColor;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import witnessmark.report.Lettering.Style;
import witnessmark.report.StripSheet.Found;
import witnessmark.report.StripSheet.Spot;

/** The lines of a strip report: a place with its part on the left, its positions beside it under each other. */
final class StripLinesTable {
    /** In points. */
    private static final float NAMES = 128;

    private static final float NUMBER = 22;
    private static final float HOW = GradeCircles.WIDE + 6;
    private static final float BEFORE = 122;

    private static final float GAP = 6;

    /** Room to write by hand; some forty of them go on a page. */
    private static final float ROW = 17;

    private final Lettering letters;
    private final SheetCells cells;
    private final float width;
    private final List<String> titles;

    /**
     * @param width of the page between its margins, in points
     * @param titles over the columns, three or four of them
     */
    StripLinesTable(Lettering letters, float width, List<String> titles) {
        this.letters = letters;
        this.cells = new SheetCells(letters);
        this.width = width;
        this.titles = titles;
    }

    /** An area, its heading and columns on every page it is on; a line goes on to the next page whole. */
    PdfPTable area(StripSheet.Area area) {
        PdfPTable table = SheetCells.table(NAMES, width - NAMES);
        table.setSpacingBefore(10);
        table.setHeaderRows(2);
        table.setSplitLate(true);
        PdfPCell heading = SheetCells.plain(letters.set(area.heading(), Style.HEADING));
        heading.setColspan(2);
        heading.setPaddingLeft(0);
        heading.setPaddingBottom(0);
        table.addCell(heading);
        table.addCell(cells.heading(titles.get(0), Style.SMALL));
        table.addCell(inside(over()));
        area.lines().forEach(line -> {
            table.addCell(name(line));
            table.addCell(inside(spots(line.spots())));
        });
        return table;
    }

    /** What was there before has a column only where somebody looked before: else there is more room to write. */
    private PdfPTable columns() {
        float found = width - NAMES - NUMBER - HOW;
        return before() ? SheetCells.table(NUMBER, HOW, found - BEFORE, BEFORE) : SheetCells.table(NUMBER, HOW, found);
    }

    private boolean before() {
        return titles.size() > 3;
    }

    private PdfPTable over() {
        PdfPTable table = columns();
        table.addCell(cells.heading("", Style.SMALL));
        for (int i = 1; i < titles.size(); i++) {
            PdfPCell title = cells.heading(titles.get(i), Style.SMALL);
            title.setPaddingLeft(i == 3 ? GAP : 0);
            table.addCell(title);
        }
        return table;
    }

    private static PdfPCell inside(PdfPTable table) {
        PdfPCell cell = new PdfPCell(table);
        cell.setBorder(Rectangle.NO_BORDER);
        cell.setPadding(0);
        return cell;
    }

    private PdfPCell name(StripSheet.Line line) {
        PdfPCell cell = row();
        cell.addElement(new Paragraph(letters.set(line.name(), Style.FIRM)));
        line.notes().forEach(note -> cell.addElement(new Paragraph(letters.set(note, Style.SMALL))));
        return cell;
    }

    private PdfPTable spots(List<Spot> spots) {
        PdfPTable table = columns();
        for (Spot spot : spots) {
            if (spot.found().isEmpty()) {
                blank(table, spot);
            }
            for (int i = 0; i < spot.found().size(); i++) {
                found(table, spot, spot.found().get(i), i == 0);
            }
        }
        return table;
    }

    /** A position to be filled in by hand. */
    private void blank(PdfPTable table, Spot spot) {
        table.addCell(words(spot.number(), Style.FIRM));
        PdfPCell circles = row();
        circles.setCellEvent(new GradeCircles(letters));
        table.addCell(circles);
        PdfPCell toWriteOn = row();
        toWriteOn.setBorderColor(new GrayColor(0));
        table.addCell(toWriteOn);
        before(table, spot.before());
    }

    private void found(PdfPTable table, Spot spot, Found found, boolean first) {
        table.addCell(words(first ? spot.number() : "", Style.FIRM));
        boolean worse = first && spot.worse();
        PdfPCell how = words(found.grade(), Style.PLAIN);
        how.setCellEvent(new HowOnPaper(found.how(), worse));
        how.setPaddingLeft(worse ? HowOnPaper.WIDE : HowOnPaper.SIDE + 5);
        table.addCell(how);
        PdfPCell what = words(found.what(), Style.PLAIN);
        found.beside().forEach(line -> what.addElement(new Paragraph(letters.set(line, Style.SMALL))));
        table.addCell(what);
        before(table, first ? spot.before() : "");
    }

    private void before(PdfPTable table, String said) {
        if (before()) {
            table.addCell(words(said, Style.SMALL));
        }
    }

    private PdfPCell words(String words, Style style) {
        PdfPCell cell = row();
        cell.setPaddingLeft(style == Style.SMALL ? GAP : 0);
        cell.addElement(new Paragraph(letters.set(words, style)));
        return cell;
    }

    private static PdfPCell row() {
        PdfPCell cell = new PdfPCell();
        cell.setMinimumHeight(ROW);
        cell.setPaddingTop(0);
        cell.setPaddingBottom(3);
        cell.setPaddingLeft(0);
        cell.setPaddingRight(4);
        return SheetCells.underlined(cell);
    }
}
