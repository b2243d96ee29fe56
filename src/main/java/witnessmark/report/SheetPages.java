package witnessmark.report;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.function.BiFunction;
import witnessmark.wording.Texts;

/**
 * Puts what stands on a sheet on A4 pages, upright, one ink. The text can be selected, the typefaces are in the file, and
 * the same sheet always gives the same bytes.
 */
final class SheetPages {
    /** Written in the file in plain letters: by it the program knows its own. */
    static final String MAKER = "Witness Mark";

    /** In points; the left one leaves room for a punch. */
    private static final float LEFT = 46;

    private static final float RIGHT = 32;
    private static final float TOP = 40;

    private final Texts texts;

    /** @param texts what every sheet says at its edges */
    SheetPages(Texts texts) {
        this.texts = texts;
    }

    /**
     * The pages of a sheet.
     *
     * @param content what stands on it from top to bottom, for its letters and the width between its margins in points
     */
    Pdf of(SheetEdges edges, BiFunction<Lettering, Float, List<Element>> content) {
        int pages = laidOut(edges, content, 0).pages(); // each page says how many there are, so they are counted first
        Pdf pdf = laidOut(edges, content, pages);
        return new Pdf(SameBytes.of(pdf.bytes()), pdf.pages());
    }

    private Pdf laidOut(SheetEdges edges, BiFunction<Lettering, Float, List<Element>> content, int pages) {
        Lettering letters = new Lettering();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document(PageSize.A4, LEFT, RIGHT, TOP, PageEdges.FOOT);
        PdfWriter writer = PdfWriter.getInstance(document, bytes);
        writer.setPageEvent(new PageEdges(edges, texts, letters, pages));
        document.addTitle(edges.title());
        document.addAuthor(edges.logbook());
        document.addCreator(MAKER);
        document.open();
        writer.getInfo()
                .put(
                        PdfName.CREATIONDATE,
                        new PdfDate(GregorianCalendar.from(edges.made().atZone(ZoneOffset.UTC))));
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(texts.locale().toLanguageTag()));
        for (Element element : content.apply(letters, document.right() - document.left())) {
            document.add(element);
        }
        if (letters.isMissing()) {
            document.add(new Paragraph(
                    letters.set(texts.get("paper.unprintable", Lettering.MISSING), Lettering.Style.SMALL)));
        }
        int last = writer.getPageNumber();
        document.close();
        return new Pdf(bytes.toByteArray(), last);
    }
}
