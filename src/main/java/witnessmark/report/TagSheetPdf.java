package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.GrayColor;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.ArrayList;
import java.util.List;
import witnessmark.report.Lettering.Style;
import witnessmark.wording.Texts;

/** Lays tags out, eight to a page, with lines between them to cut along. The same tags always give the same bytes. */
public final class TagSheetPdf {
    /** In points. */
    private static final float HIGH = 150;

    private static final float EDGE = 0.5f;
    private static final float NAME = 74;
    private static final float PADDING = 8;
    private static final float LARGE = 1.9f;

    private final SheetPages pages;

    /** @param texts what every sheet says at its edges */
    public TagSheetPdf(Texts texts) {
        this.pages = new SheetPages(texts);
    }

    /** The pages of a sheet. */
    public Pdf of(TagSheet sheet) {
        return pages.of(
                new SheetEdges(
                        sheet.title(), sheet.logbook(), sheet.day(), sheet.printed(), sheet.made(), sheet.caution()),
                (letters, width) -> content(sheet, letters, width));
    }

    private static List<Element> content(TagSheet sheet, Lettering letters, float width) {
        List<Element> content = new ArrayList<>();
        content.add(new SheetCells(letters).board(sheet.title(), sheet.board(), width));
        PdfPTable table = SheetCells.table(width / 2, width / 2);
        table.setSplitRows(false);
        sheet.tags().forEach(tag -> table.addCell(tag(tag, letters, width / 2)));
        if (sheet.tags().size() % 2 == 1) {
            table.addCell(SheetCells.plain(letters.set("", Style.PLAIN)));
        }
        content.add(table);
        return content;
    }

    private static PdfPCell tag(TagSheet.Tag tag, Lettering letters, float width) {
        PdfPTable rows = SheetCells.table(NAME, width - NAME - 2 * PADDING);
        rows.addCell(across(new Paragraph(letters.set(tag.engine() + "   " + tag.mark(), Style.HEADING, LARGE))));
        rows.addCell(across(new Paragraph(letters.set(tag.what(), Style.STRONG))));
        for (TagSheet.Line line : tag.lines()) {
            PdfPCell name = SheetCells.plain(letters.set(line.name(), Style.SMALL));
            name.setPaddingLeft(0);
            name.setPaddingTop(3);
            rows.addCell(name);
            PdfPCell words = SheetCells.plain(letters.set(line.words().isEmpty() ? " " : line.words(), Style.PLAIN));
            words.setPaddingTop(3);
            if (line.words().isEmpty()) {
                words.setBorder(Rectangle.BOTTOM);
                words.setBorderWidth(EDGE);
            }
            rows.addCell(words);
        }
        PdfPCell foot = across(new Paragraph(letters.set(tag.foot(), Style.SMALL)));
        foot.setPaddingTop(4);
        rows.addCell(foot);
        PdfPCell cell = new PdfPCell();
        cell.addElement(rows);
        cell.setMinimumHeight(HIGH);
        cell.setPadding(PADDING);
        cell.setPaddingTop(3);
        cell.setBorder(Rectangle.BOX);
        cell.setBorderWidth(EDGE);
        cell.setBorderColor(new GrayColor(0.6f));
        return cell;
    }

    private static PdfPCell across(Paragraph words) {
        PdfPCell cell = new PdfPCell();
        cell.addElement(words);
        cell.setBorder(Rectangle.NO_BORDER);
        cell.setColspan(2);
        cell.setPadding(0);
        return cell;
    }
}
