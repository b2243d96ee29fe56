package witnessmark.report;

import com.lowagie.text.Element;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPCellEvent;
import com.lowagie.text.pdf.PdfPTable;
import witnessmark.domain.HowMarked;

/** A circle for each grade with its figure in it, to be ticked by hand; that it is as it should be stands a little apart. */
final class GradeCircles implements PdfPCellEvent {
    /** In points: large enough for a marker pen. */
    private static final float ACROSS = 12;

    private static final float GAP = 2.5f;
    private static final float APART = 4;
    private static final float DOWN = 2.4f;

    /** Of all of them together. */
    static final float WIDE = HowMarked.values().length * (ACROSS + GAP) + APART;

    private final Lettering letters;

    GradeCircles(Lettering letters) {
        this.letters = letters;
    }

    @Override
    public void cellLayout(PdfPCell cell, Rectangle place, PdfContentByte[] canvases) {
        PdfContentByte pen = canvases[PdfPTable.LINECANVAS];
        float middle = place.getTop() - DOWN - ACROSS / 2;
        float x = place.getLeft() + 1 + ACROSS / 2;
        for (HowMarked how : HowMarked.values()) {
            pen.saveState();
            pen.setLineWidth(0.7f);
            pen.setGrayStroke(0.2f);
            pen.circle(x, middle, ACROSS / 2);
            pen.stroke();
            pen.restoreState();
            ColumnText.showTextAligned(
                    canvases[PdfPTable.TEXTCANVAS],
                    Element.ALIGN_CENTER,
                    letters.set(Integer.toString(how.ordinal()), Lettering.Style.SMALL),
                    x,
                    middle - 2.6f,
                    0);
            x += ACROSS + GAP + (how == HowMarked.NONE ? APART : 0);
        }
    }
}
