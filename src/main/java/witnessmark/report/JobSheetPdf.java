package witnessmark.report;

import com.lowagie.text.Document;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import witnessmark.wording.Texts;

/**
 * Lays a job sheet out on A4 pages, upright, one ink. The text can be selected, the typefaces are in the file, and the
 * same sheet always gives the same bytes.
 */
public final class JobSheetPdf {
    /** Written in the file in plain letters: by it the program knows its own. */
    static final String MAKER = "Witness Mark";

    /** In points; the left one leaves room for a punch. */
    private static final float LEFT = 46;

    private static final float RIGHT = 32;
    private static final float TOP = 40;

    private final Texts texts;

    /** @param texts what every sheet says at its edges */
    public JobSheetPdf(Texts texts) {
        this.texts = texts;
    }

    /** The pages of a sheet. */
    public Pdf of(JobSheet sheet) {
        int pages = laidOut(sheet, 0).pages(); // each page says how many there are, so they are counted first
        Pdf pdf = laidOut(sheet, pages);
        return new Pdf(SameBytes.of(pdf.bytes()), pdf.pages());
    }

    private Pdf laidOut(JobSheet sheet, int pages) {
        Lettering letters = new Lettering();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document(PageSize.A4, LEFT, RIGHT, TOP, PageEdges.FOOT);
        PdfWriter writer = PdfWriter.getInstance(document, bytes);
        writer.setPageEvent(new PageEdges(sheet, texts, letters, pages));
        document.addTitle(sheet.title());
        document.addAuthor(sheet.logbook());
        document.addCreator(MAKER);
        document.open();
        writer.getInfo()
                .put(
                        PdfName.CREATIONDATE,
                        new PdfDate(GregorianCalendar.from(sheet.made().atZone(ZoneOffset.UTC))));
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(texts.locale().toLanguageTag()));
        SheetTables tables = new SheetTables(texts, letters, document.right() - document.left());
        document.add(tables.board(sheet));
        sheet.under().forEach(line -> document.add(new Paragraph(letters.set(line, Lettering.Style.PLAIN))));
        sheet.sections().forEach(section -> document.add(tables.section(section)));
        if (letters.isMissing()) {
            document.add(new Paragraph(
                    letters.set(texts.get("jobsheet.unprintable", Lettering.MISSING), Lettering.Style.SMALL)));
        }
        int last = writer.getPageNumber();
        document.close();
        return new Pdf(bytes.toByteArray(), last);
    }
}
