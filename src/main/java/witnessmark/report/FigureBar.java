package witnessmark.report;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPCellEvent;
import com.lowagie.text.pdf.PdfPTable;

/** A bar across its cell, as long against the others as its figure. */
final class FigureBar implements PdfPCellEvent {
    /** In points. */
    private static final float HIGH = 6;

    private static final float TOP = 4;

    /** Dark enough for a copier, light enough beside the letters. */
    private static final float GRAY = 0.35f;

    private final double length;
    private final float gap;

    /**
     * @param length from 0 to 1, of the width of the cell
     * @param gap kept free on the right of the cell, in points
     */
    FigureBar(double length, float gap) {
        this.length = length;
        this.gap = gap;
    }

    @Override
    public void cellLayout(PdfPCell cell, Rectangle place, PdfContentByte[] canvases) {
        PdfContentByte pen = canvases[PdfPTable.LINECANVAS];
        pen.saveState();
        pen.setGrayFill(GRAY);
        pen.rectangle(place.getLeft(), place.getTop() - TOP - HIGH, (float) length * (place.getWidth() - gap), HIGH);
        pen.fill();
        pen.restoreState();
    }
}
