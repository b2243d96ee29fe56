package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/** Draws a {@link StackedBar}. */
public final class DrawnBar {
    private static final double STEP = 5;
    private static final double DOT = 1.7;

    private final Graphics2D g;
    private final Color ink;
    private final Color sheet;
    private final double unit;

    /**
     * @param ink what fills and outlines
     * @param sheet what lies between the lines of a hatch
     * @param unit what one pixel of the design measures here
     */
    public DrawnBar(Graphics2D g, Color ink, Color sheet, double unit) {
        this.g = g;
        this.ink = ink;
        this.sheet = sheet;
        this.unit = unit;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** Draws it from the left edge of the box on; the whole scale is as wide as the box. */
    public void draw(StackedBar bar, Rectangle2D box) {
        double from = 0;
        for (StackedBar.Piece piece : bar.pieces()) {
            double left = Math.rint(box.getX() + box.getWidth() * from);
            from += piece.share();
            double right = Math.rint(box.getX() + box.getWidth() * from);
            if (right > left) {
                fill(piece.fill(), new Rectangle2D.Double(left, box.getY(), right - left, box.getHeight()));
            }
        }
    }

    private void fill(StackedBar.Fill fill, Rectangle2D box) {
        if (fill == StackedBar.Fill.SOLID) {
            g.setColor(ink);
            g.fill(box);
            return;
        }
        g.setColor(sheet);
        g.fill(box);
        @Nullable Shape before = g.getClip();
        g.clip(box);
        g.setColor(ink);
        g.setStroke(new BasicStroke((float) (1.6 * unit)));
        if (fill == StackedBar.Fill.HATCHED) {
            hatch(box);
        } else if (fill == StackedBar.Fill.DOTTED) {
            dots(box);
        }
        g.setClip(before);
        g.setStroke(new BasicStroke((float) (1.2 * unit)));
        double edge = 0.6 * unit;
        g.draw(new Rectangle2D.Double(
                box.getX() + edge,
                box.getY() + edge,
                Math.max(0, box.getWidth() - 2 * edge),
                box.getHeight() - 2 * edge));
    }

    private void hatch(Rectangle2D box) {
        double high = box.getHeight();
        for (double x = box.getX() - high; x < box.getMaxX() + high; x += STEP * unit) {
            g.draw(new Line2D.Double(x, box.getMaxY(), x + high, box.getY()));
        }
    }

    private void dots(Rectangle2D box) {
        double size = DOT * unit;
        for (double y = box.getY() + 2 * unit; y < box.getMaxY(); y += 4 * unit) {
            for (double x = box.getX() + 2 * unit; x < box.getMaxX(); x += 4 * unit) {
                g.fill(new Ellipse2D.Double(x, y, size, size));
            }
        }
    }
}
