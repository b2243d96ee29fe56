package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Image;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import witnessmark.report.Lettering.Style;
import witnessmark.wording.Texts;

/** Lays the case sheet of an incident out. The same sheet always gives the same bytes. */
public final class CaseSheetPdf {
    private static final float GAP = 10;
    private static final float HIGH = 190;

    private final SheetPages pages;

    /** @param texts what every sheet says at its edges */
    public CaseSheetPdf(Texts texts) {
        this.pages = new SheetPages(texts);
    }

    /** The pages of a sheet. */
    public Pdf of(CaseSheet sheet) {
        return pages.of(
                new SheetEdges(
                        sheet.title(), sheet.edge(), sheet.day(), sheet.printed(), sheet.made(), sheet.caution()),
                (letters, width) -> content(sheet, letters, width));
    }

    private static List<Element> content(CaseSheet sheet, Lettering letters, float width) {
        SheetCells cells = new SheetCells(letters);
        List<Element> content = new ArrayList<>();
        content.addAll(cells.top(sheet.title(), sheet.board(), sheet.under(), width));
        sheet.tables().forEach(section -> content.add(new FigureTable(letters, width, section).table()));
        if (!sheet.pictures().isEmpty()) {
            content.add(pictures(sheet.pictures(), letters, width));
        }
        sheet.notes().forEach(note -> content.add(new Paragraph(letters.set(note, Style.SMALL))));
        return content;
    }

    private static PdfPTable pictures(List<CaseSheet.Picture> pictures, Lettering letters, float width) {
        float wide = (width - GAP) / 2;
        PdfPTable table = SheetCells.table(wide, GAP, wide);
        table.setSpacingBefore(12);
        for (int i = 0; i < pictures.size(); i += 2) {
            table.addCell(picture(pictures.get(i), letters, wide));
            table.addCell(SheetCells.plain(letters.set("", Style.PLAIN)));
            table.addCell(
                    i + 1 < pictures.size()
                            ? picture(pictures.get(i + 1), letters, wide)
                            : SheetCells.plain(letters.set("", Style.PLAIN)));
        }
        return table;
    }

    private static PdfPCell picture(CaseSheet.Picture picture, Lettering letters, float wide) {
        PdfPCell cell = SheetCells.plain(letters.set("", Style.PLAIN));
        try {
            Image image = Image.getInstance(picture.jpeg());
            image.scaleToFit(wide, HIGH);
            cell.addElement(image);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture the program drew is none", e);
        }
        cell.addElement(new Paragraph(letters.set(picture.words(), Style.SMALL)));
        cell.setPadding(0);
        cell.setPaddingBottom(8);
        return cell;
    }
}
