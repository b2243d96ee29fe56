package witnessmark.desktop.strip;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Palette;
import witnessmark.domain.PartSpot;
import witnessmark.study.result.Outline;

/** Paints the outline of a part, which way round it lies, and the marks on it. */
final class PartPainter {
    private static final int QUARTERS = 4;

    private final PartPlane plane;
    private final Graphics2D g;
    private final double mark = UIScale.scale(10f);

    PartPainter(PartPlane plane, Graphics2D g) {
        this.plane = plane;
        this.g = g;
    }

    /**
     * @param sides what lies round it, from where the counting begins
     * @param edge the edge that is counted from, empty for none
     * @param far the edge that is counted to, empty for none
     */
    void outline(List<String> sides, String edge, String far) {
        Rectangle2D box = plane.box();
        g.setColor(Palette.TRACK.colour());
        g.fill(plane.edge());
        g.setColor(Palette.INK2.mixedWith(Palette.TRACK, 0.35));
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        if (plane.outline().disc()) {
            g.draw(new Line2D.Double(box.getX(), box.getCenterY(), box.getMaxX(), box.getCenterY()));
            g.draw(new Line2D.Double(box.getCenterX(), box.getY(), box.getCenterX(), box.getMaxY()));
        } else {
            for (int i = 1; i < QUARTERS; i++) {
                double x = box.getX() + box.getWidth() * i / QUARTERS;
                g.draw(new Line2D.Double(x, box.getY(), x, box.getMaxY()));
            }
        }
        g.setColor(Palette.INK2.colour());
        g.draw(plane.edge());
        if (plane.outline().disc()) {
            around(sides);
        } else {
            flat(sides, edge, far);
        }
    }

    /** Left, below, right and above a disc; above, right, below and left of one that is seen from the front end. */
    private void around(List<String> sides) {
        Rectangle2D box = plane.box();
        FontMetrics metrics = g.getFontMetrics();
        double gap = UIScale.scale(6f);
        double level = box.getCenterY() + metrics.getAscent() / 2.0 - UIScale.scale(1f);
        int first = plane.outline() == Outline.DISC ? 0 : 3;
        String left = sides.get(first);
        g.drawString(left, (float) (box.getX() - gap - metrics.stringWidth(left)), (float) level);
        g.drawString(sides.get((first + 2) % QUARTERS), (float) (box.getMaxX() + gap), (float) level);
        String below = sides.get(plane.outline() == Outline.DISC ? 1 : 2);
        String above = sides.get(plane.outline() == Outline.DISC ? 3 : 0);
        centred(below, box.getCenterX(), box.getMaxY() + UIScale.scale(2f) + metrics.getAscent());
        centred(above, box.getCenterX(), box.getY() - UIScale.scale(2f) - metrics.getDescent());
    }

    /** Below what is laid flat; the first comes round again at its end. */
    private void flat(List<String> sides, String edge, String far) {
        Rectangle2D box = plane.box();
        FontMetrics metrics = g.getFontMetrics();
        double below = box.getMaxY() + UIScale.scale(2f) + metrics.getAscent();
        boolean half = plane.outline() == Outline.HALF;
        String last = sides.get(half ? sides.size() - 1 : 0);
        g.drawString(sides.get(0), (float) box.getX(), (float) below);
        g.drawString(last, (float) (box.getMaxX() - metrics.stringWidth(last)), (float) below);
        for (int i = 1; !half && i < sides.size(); i++) {
            centred(sides.get(i), box.getX() + box.getWidth() * i / sides.size(), below);
        }
        centred(far, box.getCenterX(), below);
        centred(edge, box.getCenterX(), box.getY() - UIScale.scale(2f) - metrics.getDescent());
    }

    private void centred(String words, double x, double y) {
        g.drawString(words, (float) (x - g.getFontMetrics().stringWidth(words) / 2.0), (float) y);
    }

    /** @param cursor where keys would put it, or null while they do not go there */
    void marks(List<PartSpots.Spot> spots, @Nullable PartSpot cursor) {
        spots.forEach(this::spot);
        if (cursor != null) {
            cross(plane.point(cursor));
        }
    }

    private void spot(PartSpots.Spot spot) {
        Point2D at = plane.point(spot.place());
        switch (spot.whose()) {
            case OTHER -> {
                g.setColor(Palette.INK2.colour());
                centred(spot.number(), at.getX(), at.getY() + g.getFontMetrics().getAscent() / 2.0);
            }
            case BEFORE -> ring(at, Palette.INK2, 1f);
            case NOW -> HowShapes.draw(g, spot.how(), at.getX(), at.getY(), mark);
            case IN_HAND -> {
                HowShapes.draw(g, spot.how(), at.getX(), at.getY(), mark);
                frame(at);
            }
        }
    }

    private void ring(Point2D at, Palette ink, float width) {
        g.setColor(ink.colour());
        g.setStroke(new BasicStroke(UIScale.scale(width)));
        double size = mark * 1.3;
        g.draw(new Ellipse2D.Double(at.getX() - size / 2, at.getY() - size / 2, size, size));
    }

    /** Corners about the one in hand, so that it is told from the others without a colour. */
    private void frame(Point2D at) {
        g.setColor(Palette.MARK.colour());
        g.setStroke(new BasicStroke(UIScale.scale(1.5f)));
        double half = mark * 0.95;
        double arm = half * 0.6;
        for (int x = -1; x <= 1; x += 2) {
            for (int y = -1; y <= 1; y += 2) {
                double cornerX = at.getX() + x * half;
                double cornerY = at.getY() + y * half;
                g.draw(new Line2D.Double(cornerX, cornerY, cornerX - x * arm, cornerY));
                g.draw(new Line2D.Double(cornerX, cornerY, cornerX, cornerY - y * arm));
            }
        }
    }

    private void cross(Point2D at) {
        g.setColor(Palette.MARK.colour());
        g.setStroke(new BasicStroke(UIScale.scale(1.5f)));
        g.draw(new Line2D.Double(at.getX() - mark * 1.4, at.getY(), at.getX() + mark * 1.4, at.getY()));
        g.draw(new Line2D.Double(at.getX(), at.getY() - mark * 1.4, at.getX(), at.getY() + mark * 1.4));
    }
}
