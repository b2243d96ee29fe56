package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import java.util.ArrayList;
import java.util.List;
import witnessmark.wording.Texts;

/** Lays a job sheet out on pages. The same sheet always gives the same bytes. */
public final class JobSheetPdf {
    private final Texts texts;
    private final SheetPages pages;

    /** @param texts what every sheet says at its edges */
    public JobSheetPdf(Texts texts) {
        this.texts = texts;
        this.pages = new SheetPages(texts);
    }

    /** The pages of a sheet. */
    public Pdf of(JobSheet sheet) {
        return pages.of(
                new SheetEdges(
                        sheet.title(),
                        sheet.logbook(),
                        sheet.day(),
                        sheet.printed(),
                        sheet.made(),
                        texts.get("jobsheet.caution")),
                (letters, width) -> content(sheet, letters, width));
    }

    private List<Element> content(JobSheet sheet, Lettering letters, float width) {
        List<Element> content = new ArrayList<>();
        content.add(new SheetCells(letters).board(sheet.title(), sheet.board(), width));
        sheet.under().forEach(line -> content.add(new Paragraph(letters.set(line, Lettering.Style.PLAIN))));
        SheetTables tables = new SheetTables(texts, letters, width);
        sheet.sections().forEach(section -> content.add(tables.section(section)));
        return content;
    }
}
