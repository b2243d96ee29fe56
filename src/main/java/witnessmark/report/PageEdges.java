package witnessmark.report;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfWriter;
import witnessmark.wording.Texts;

/**
 * What stands at the foot of every page: the caution, whose sheet it is, of which day, when it was printed and which page
 * it is; and at the head, from the second page on, what sheet it is.
 */
final class PageEdges extends PdfPageEventHelper {
    /** Room kept for the foot, in points from the lower edge of the paper. */
    static final float FOOT = 64;

    private static final float LOWEST = 24;
    private static final float HAIRLINE = 0.4f;
    private static final float FOR_PAGE = 70;
    private static final Lettering.Style STYLE = Lettering.Style.SMALL;

    private final SheetEdges edges;
    private final Texts texts;
    private final Lettering letters;
    private final int pages;

    /** @param pages how many pages there are */
    PageEdges(SheetEdges edges, Texts texts, Lettering letters, int pages) {
        this.edges = edges;
        this.texts = texts;
        this.letters = letters;
        this.pages = pages;
    }

    @Override
    public void onEndPage(PdfWriter writer, Document document) {
        PdfContentByte pen = writer.getDirectContent();
        float left = document.left();
        float right = document.right();
        pen.saveState();
        pen.setLineWidth(HAIRLINE);
        pen.moveTo(left, FOOT - 8);
        pen.lineTo(right, FOOT - 8);
        pen.stroke();
        pen.restoreState();
        String whose = texts.get("paper.foot", edges.logbook(), edges.day(), edges.printed());
        column(pen, edges.caution(), left, right, FOOT - 8);
        column(pen, whose, left, right - FOR_PAGE, LOWEST + 12);
        String page = texts.get("paper.page", writer.getPageNumber(), pages);
        line(pen, Element.ALIGN_RIGHT, page, right, LOWEST + 12 - STYLE.size() * Lettering.LINE);
        if (writer.getPageNumber() > 1) {
            line(pen, Element.ALIGN_LEFT, edges.title(), left, document.top() + 8);
        }
    }

    private void line(PdfContentByte pen, int side, String words, float x, float y) {
        ColumnText.showTextAligned(pen, side, letters.set(words, STYLE), x, y, 0);
    }

    /** Words that break where the page ends, from a height downwards. */
    private void column(PdfContentByte pen, String words, float left, float right, float top) {
        ColumnText column = new ColumnText(pen);
        column.setSimpleColumn(
                letters.set(words, STYLE),
                left,
                LOWEST - STYLE.size(),
                right,
                top,
                STYLE.size() * Lettering.LINE,
                Element.ALIGN_LEFT);
        column.go();
    }
}
