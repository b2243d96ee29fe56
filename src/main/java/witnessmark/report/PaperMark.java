package witnessmark.report;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPCellEvent;
import com.lowagie.text.pdf.PdfPTable;
import witnessmark.ledger.result.MarkState;

/**
 * The witness mark on paper: a seam with a stroke across it, whose halves have slipped as far as it stands. Shapes alone
 * tell the states apart, in one ink. Drawn on a square of 24 units, 14 points wide, at the top of its cell.
 */
final class PaperMark implements PdfPCellEvent {
    /** In points. */
    static final float SIDE = 14;

    private static final float UNITS = 24;
    private static final float SEAM = 12;
    private static final float HALF = 11;
    private static final float THICK = 7;
    private static final float TOP = 3;

    private final MarkState state;

    PaperMark(MarkState state) {
        this.state = state;
    }

    @Override
    public void cellLayout(PdfPCell cell, Rectangle place, PdfContentByte[] canvases) {
        PdfContentByte pen = canvases[PdfPTable.LINECANVAS];
        float scale = SIDE / UNITS;
        pen.saveState();
        pen.concatCTM(scale, 0, 0, scale, place.getLeft(), place.getTop() - TOP - SIDE);
        pen.setLineWidth(1.6f);
        switch (state) {
            case HELD, OVER, RUN_ON -> halves(pen, 14, 3, true);
            case DUE -> halves(pen, 11, 6, false);
            case NOT_KNOWN -> dashed(pen);
            case WITHIN -> halves(pen, 8.5f, 8.5f, true);
        }
        pen.rectangle(SEAM - 0.9f, 0, 1.8f, UNITS);
        pen.fill();
        across(pen);
        pen.restoreState();
    }

    /** The right half lies lower, as on the screen; the page counts from below. */
    private static void halves(PdfContentByte pen, float left, float right, boolean solid) {
        half(pen, SEAM - HALF, left, solid);
        half(pen, SEAM, right, solid);
    }

    private static void half(PdfContentByte pen, float x, float y, boolean solid) {
        float in = solid ? 0 : 0.8f;
        pen.rectangle(x + in, y + in, HALF - 2 * in, THICK - 2 * in);
        if (solid) {
            pen.fill();
        } else {
            pen.stroke();
        }
    }

    private static void dashed(PdfContentByte pen) {
        pen.setLineDash(2.4f, 1.8f, 0);
        half(pen, SEAM - HALF, 8.5f, false);
        half(pen, SEAM, 8.5f, false);
        pen.setLineDash(0);
    }

    /** A bar across the seam when it is held, a bracket over it when somebody signed to run on. */
    private void across(PdfContentByte pen) {
        if (state == MarkState.HELD) {
            pen.setGrayFill(1);
            pen.rectangle(SEAM - 8, 9.4f, 16, 5.2f);
            pen.fill();
            pen.setGrayFill(0);
            pen.rectangle(SEAM - 7, 10.4f, 14, 3.2f);
            pen.fill();
        } else if (state == MarkState.RUN_ON) {
            pen.moveTo(SEAM - 5, 10);
            pen.lineTo(SEAM - 5, 5.5f);
            pen.lineTo(SEAM - 1, 5.5f);
            pen.moveTo(SEAM + 5, 14);
            pen.lineTo(SEAM + 5, 18.5f);
            pen.lineTo(SEAM + 1, 18.5f);
            pen.stroke();
        }
    }
}
