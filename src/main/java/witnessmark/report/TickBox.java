package witnessmark.report;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPCellEvent;
import com.lowagie.text.pdf.PdfPTable;

/** A box to tick at the top of its cell, ticked already when it is done. */
final class TickBox implements PdfPCellEvent {
    /** In points: large enough for a marker pen. */
    static final float SIDE = 11;

    private static final float TOP = 4.5f;

    private final boolean done;

    TickBox(boolean done) {
        this.done = done;
    }

    @Override
    public void cellLayout(PdfPCell cell, Rectangle place, PdfContentByte[] canvases) {
        PdfContentByte pen = canvases[PdfPTable.LINECANVAS];
        float left = place.getLeft() + 1;
        float bottom = place.getTop() - TOP - SIDE;
        pen.saveState();
        pen.setGrayStroke(0);
        pen.setLineWidth(0.9f);
        pen.rectangle(left, bottom, SIDE, SIDE);
        pen.stroke();
        if (done) {
            pen.setLineWidth(1.6f);
            pen.moveTo(left + 2.2f, bottom + 5.5f);
            pen.lineTo(left + 4.6f, bottom + 2.6f);
            pen.lineTo(left + 9f, bottom + 8.8f);
            pen.stroke();
        }
        pen.restoreState();
    }
}
