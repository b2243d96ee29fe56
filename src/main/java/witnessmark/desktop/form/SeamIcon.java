package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;

/**
 * The witness mark: a seam with a stroke across it. How far the two halves have slipped is the state; it reads in black
 * and white. Drawn on a square of 24 units.
 */
public final class SeamIcon implements Icon {
    /** Side of the square at full size, in unscaled pixels. */
    public static final int SIDE = 24;

    private static final double SEAM = 12;
    private static final double HALF = 11;
    private static final double THICK = 7;

    private final SeamState state;
    private final int side;
    private final boolean plate;

    public SeamIcon(SeamState state) {
        this(state, SIDE);
    }

    /** @param side the side of the square in unscaled pixels, 16 or more */
    public SeamIcon(SeamState state, int side) {
        this(state, side, false);
    }

    private SeamIcon(SeamState state, int side, boolean plate) {
        this.state = state;
        this.side = side;
        this.plate = plate;
    }

    /** The same on a plate of the sheet's colour, to be told from the ground of a row in hand. */
    SeamIcon onPlate() {
        return new SeamIcon(state, side, true);
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(side);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(side);
    }

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.translate(x, y);
        double scale = (double) getIconWidth() / SIDE;
        g.scale(scale, scale);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        if (plate) {
            g.setColor(Palette.SHEET.colour());
            g.fill(new Rectangle2D.Double(-2, 0, SIDE + 4, SIDE));
        }
        paintHalves(g);
        paintSeam(g);
        paintAcross(g);
        g.dispose();
    }

    private void paintHalves(Graphics2D g) {
        switch (state) {
            case HELD -> halves(g, 3, 14, 0, Palette.OVER_FILL, Palette.OVER);
            case OVER -> halves(g, 3, 14, 0, Palette.OVER, Palette.OVER);
            case RUN_ON -> halves(g, 3, 14, 0, Palette.OVER, Palette.OVER);
            case DUE -> halves(g, 6, 11, 0, Palette.DUE_FILL, Palette.DUE);
            case NOT_KNOWN -> dashed(g);
            case WITHIN -> halves(g, 8.5, 8.5, 0, Palette.WITHIN, Palette.WITHIN);
            case APART -> halves(g, 8.5, 8.5, 4, Palette.WITHIN, Palette.WITHIN);
            case SCRAP -> {}
        }
    }

    private void halves(Graphics2D g, double left, double right, double away, Palette fill, Palette outline) {
        double wide = HALF - away;
        half(g, new Rectangle2D.Double(SEAM - HALF, left, wide, THICK), fill.colour(), outline.colour());
        half(g, new Rectangle2D.Double(SEAM + away, right, wide, THICK), fill.colour(), outline.colour());
    }

    private static void half(Graphics2D g, Rectangle2D.Double box, Color fill, Color outline) {
        g.setColor(fill);
        g.fill(box);
        if (!fill.equals(outline)) {
            g.setColor(outline);
            g.setStroke(new BasicStroke(1.25f));
            g.draw(new Rectangle2D.Double(box.x + 0.6, box.y + 0.6, box.width - 1.2, box.height - 1.2));
        }
    }

    private static void dashed(Graphics2D g) {
        g.setColor(Palette.NOT_KNOWN.colour());
        float[] dashes = {2.4f, 1.8f};
        g.setStroke(new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, dashes, 0f));
        g.draw(new Rectangle2D.Double(SEAM - HALF + 0.7, 9, HALF - 2.2, THICK - 1));
        g.draw(new Rectangle2D.Double(SEAM + 1.5, 9, HALF - 2.2, THICK - 1));
    }

    private void paintSeam(Graphics2D g) {
        g.setColor(Palette.FIELD_BORDER.colour());
        g.fill(new Rectangle2D.Double(SEAM - 0.9, 0, 1.8, SIDE));
    }

    private void paintAcross(Graphics2D g) {
        switch (state) {
            case HELD -> {
                g.setColor(Palette.INK.colour());
                g.fill(new Rectangle2D.Double(SEAM - 7, 10.6, 14, 2.8));
            }
            case RUN_ON -> {
                g.setColor(Palette.INK.colour());
                g.setStroke(new BasicStroke(1.8f, BasicStroke.CAP_SQUARE, BasicStroke.JOIN_MITER));
                Path2D bracket = new Path2D.Double();
                bracket.moveTo(SEAM - 5, 14.5);
                bracket.lineTo(SEAM - 5, 18.5);
                bracket.lineTo(SEAM - 1, 18.5);
                bracket.moveTo(SEAM + 5, 9.5);
                bracket.lineTo(SEAM + 5, 5.5);
                bracket.lineTo(SEAM + 1, 5.5);
                g.draw(bracket);
            }
            case SCRAP -> {
                g.setColor(Palette.NOT_KNOWN.colour());
                g.setStroke(new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
                g.draw(new Line2D.Double(SEAM - 6, 15, SEAM + 6, 9));
            }
            case OVER, DUE, NOT_KNOWN, WITHIN, APART -> {}
        }
    }
}
