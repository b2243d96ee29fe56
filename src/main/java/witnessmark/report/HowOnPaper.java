package witnessmark.report;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPCellEvent;
import com.lowagie.text.pdf.PdfPTable;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.HowMarked;

/**
 * How far a mark has gone as a shape on paper, at the top left of its cell: a tick, a box that fills, crossed when it failed; a dash
 * where nobody judged. An arrow up beside it says that it got worse.
 */
final class HowOnPaper implements PdfPCellEvent {
    /** In points. */
    static final float SIDE = 8;

    /** With the arrow beside it. */
    static final float WIDE = 21;

    private static final float TOP = 3.5f;
    private static final float LINE = 0.9f;

    private final @Nullable HowMarked how;
    private final boolean worse;

    /** @param how null where nobody judged */
    HowOnPaper(@Nullable HowMarked how, boolean worse) {
        this.how = how;
        this.worse = worse;
    }

    @Override
    public void cellLayout(PdfPCell cell, Rectangle place, PdfContentByte[] canvases) {
        PdfContentByte pen = canvases[PdfPTable.LINECANVAS];
        float x = place.getLeft() + 1;
        float y = place.getTop() - TOP - SIDE;
        pen.saveState();
        pen.setLineWidth(LINE);
        if (how == null) {
            line(pen, x, y + SIDE / 2, x + SIDE, y + SIDE / 2);
        } else if (how == HowMarked.NONE) {
            line(pen, x + 0.5f, y + 4, x + 3, y + 1.2f, x + 7.5f, y + 7);
        } else {
            filled(pen, how, x, y);
        }
        if (worse) {
            arrow(pen, x + SIDE + 5.5f, y);
        }
        pen.restoreState();
    }

    private static void filled(PdfContentByte pen, HowMarked how, float x, float y) {
        pen.rectangle(x, y, SIDE, Math.min(1, how.ordinal() / 3f) * SIDE);
        pen.fill();
        pen.rectangle(x, y, SIDE, SIDE);
        pen.stroke();
        if (how == HowMarked.FAILED) {
            pen.setGrayStroke(1);
            line(pen, x, y, x + SIDE, y + SIDE);
            line(pen, x, y + SIDE, x + SIDE, y);
        }
    }

    private static void arrow(PdfContentByte pen, float x, float y) {
        pen.setLineWidth(1.3f);
        line(pen, x, y, x, y + SIDE);
        line(pen, x - 2.5f, y + SIDE - 3, x, y + SIDE, x + 2.5f, y + SIDE - 3);
    }

    private static void line(PdfContentByte pen, float... points) {
        pen.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            pen.lineTo(points[i], points[i + 1]);
        }
        pen.stroke();
    }
}
