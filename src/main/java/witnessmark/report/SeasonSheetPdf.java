package witnessmark.report;

import com.lowagie.text.Chunk;
import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import java.util.ArrayList;
import java.util.List;
import witnessmark.report.Lettering.Style;
import witnessmark.wording.Texts;

/** Lays a season out on pages. The same sheet always gives the same bytes. */
public final class SeasonSheetPdf {
    private final SheetPages pages;

    /** @param texts what every sheet says at its edges */
    public SeasonSheetPdf(Texts texts) {
        this.pages = new SheetPages(texts);
    }

    /** The pages of a sheet. */
    public Pdf of(SeasonSheet sheet) {
        return pages.of(
                new SheetEdges(
                        sheet.title(), sheet.logbook(), sheet.day(), sheet.printed(), sheet.made(), sheet.caution()),
                (letters, width) -> content(sheet, letters, width));
    }

    private static List<Element> content(SeasonSheet sheet, Lettering letters, float width) {
        List<Element> content = new ArrayList<>();
        for (SeasonSheet.Part part : sheet.parts()) {
            if (!content.isEmpty()) {
                content.add(Chunk.NEXTPAGE);
            }
            content.add(new SheetCells(letters).board(part.title(), part.board(), width));
            Style style = Style.STRONG;
            for (String line : part.under()) {
                content.add(new Paragraph(letters.set(line, style)));
                style = Style.PLAIN;
            }
            part.sections().forEach(section -> content.add(new FigureTable(letters, width, section).table()));
        }
        return content;
    }
}
