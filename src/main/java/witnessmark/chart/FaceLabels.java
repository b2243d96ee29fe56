package witnessmark.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds room for the words of a face map, so that none lies over another or over a reading. */
final class FaceLabels {
    /** How far off a place its word may stand, in lines. */
    private static final int RINGS = 4;

    private static final double[] ALONG = {0.5, 0.3, 0.7, 0.15, 0.85};

    private final Rectangle2D face;
    private final Color ground;
    private final double scale;
    private final List<Rectangle2D> taken;

    /**
     * @param ground behind words
     * @param scale what one pixel of the design measures
     * @param taken where something stands already
     */
    FaceLabels(Rectangle2D face, Color ground, double scale, List<Rectangle2D> taken) {
        this.face = face;
        this.ground = ground;
        this.scale = scale;
        this.taken = new ArrayList<>(taken);
    }

    void take(Rectangle2D box) {
        taken.add(box);
    }

    /** Writes words on the nearest free side of a place. */
    void beside(Graphics2D g, String text, double x, double y) {
        double away = px(16) + g.getFontMetrics().stringWidth(text) / 2.0;
        double line = g.getFontMetrics().getHeight() + px(4);
        double[][] around = {
            {away, 0}, {-away, 0}, {0, line}, {0, -line}, {away, line}, {away, -line}, {-away, line}, {-away, -line}
        };
        for (int ring = 1; ring <= RINGS; ring++) {
            for (double[] side : around) {
                boolean last = ring == RINGS && side == around[around.length - 1];
                if (put(g, text, x + side[0], y + side[1] * ring, last)) {
                    return;
                }
            }
        }
    }

    /** Writes words over or under a box, or beside it where there is no room. */
    void at(Graphics2D g, String text, Rectangle2D box) {
        double half = g.getFontMetrics().getHeight() / 2.0;
        double x = box.getCenterX();
        if (!put(g, text, x, box.getMaxY() + half, false) && !put(g, text, x, box.getY() - half, false)) {
            beside(g, text, x, box.getCenterY());
        }
    }

    /** Writes words along a line. */
    void along(Graphics2D g, String text, double fromX, double fromY, double toX, double toY) {
        for (double share : ALONG) {
            boolean last = share == ALONG[ALONG.length - 1];
            if (put(g, text, fromX + (toX - fromX) * share, fromY + (toY - fromY) * share, last)) {
                return;
            }
        }
    }

    /** Writes words about a place where nothing stands yet; the last try is written whatever stands there. */
    private boolean put(Graphics2D g, String text, double x, double y, boolean whatever) {
        FontMetrics letters = g.getFontMetrics();
        double wide = letters.stringWidth(text) + px(6);
        double high = letters.getHeight();
        double left = Math.max(face.getX() + px(1), Math.min(x - wide / 2, face.getMaxX() - wide - px(1)));
        double top = Math.max(face.getY() + px(1), Math.min(y - high / 2, face.getMaxY() - high - px(1)));
        Rectangle2D box = new Rectangle2D.Double(left, top, wide, high);
        if (!whatever && taken.stream().anyMatch(box::intersects)) {
            return false;
        }
        Color ink = g.getColor();
        g.setColor(ground);
        g.fill(box);
        g.setColor(ink);
        centred(g, text, box, box.getY() + letters.getAscent());
        taken.add(box);
        return true;
    }

    static void centred(Graphics2D g, String text, Rectangle2D box, double y) {
        g.drawString(text, (float) (box.getCenterX() - g.getFontMetrics().stringWidth(text) / 2.0), (float) y);
    }

    static void bold(Graphics2D g, String text, Rectangle2D box, double y) {
        Font plain = g.getFont();
        g.setFont(plain.deriveFont(Font.BOLD));
        centred(g, text, box, y);
        g.setFont(plain);
    }

    private double px(double pixels) {
        return pixels * scale;
    }
}
