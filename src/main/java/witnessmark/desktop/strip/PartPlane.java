package witnessmark.desktop.strip;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import witnessmark.domain.PartSpot;
import witnessmark.study.result.Outline;

/**
 * Where places of a part lie on its drawing. A disc has its front end to the left and its exhaust side below, or its top above and
 * its exhaust side to the right; what is laid flat goes round from left to right.
 */
final class PartPlane {
    private static final int WHOLE = 360;
    private static final int FULL = 100;

    private final Outline outline;
    private final Rectangle2D box;

    /** @param room where it is drawn; a disc is as large as fits into its middle */
    PartPlane(Outline outline, Rectangle2D room) {
        this.outline = outline;
        double side = Math.min(room.getWidth(), room.getHeight());
        this.box = outline.disc()
                ? new Rectangle2D.Double(room.getCenterX() - side / 2, room.getCenterY() - side / 2, side, side)
                : room;
    }

    Outline outline() {
        return outline;
    }

    Rectangle2D box() {
        return box;
    }

    Shape edge() {
        return outline.disc() ? new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight()) : box;
    }

    Point2D point(PartSpot place) {
        if (!outline.disc()) {
            return new Point2D.Double(
                    box.getX() + box.getWidth() * Math.min(1.0, (double) place.around() / outline.degrees()),
                    box.getY() + box.getHeight() * place.out() / FULL);
        }
        double radius = box.getWidth() / 2 * place.out() / FULL;
        double angle = Math.toRadians(place.around());
        double first = radius * Math.cos(angle);
        double second = radius * Math.sin(angle);
        return outline == Outline.DISC
                ? new Point2D.Double(box.getCenterX() - first, box.getCenterY() + second)
                : new Point2D.Double(box.getCenterX() + second, box.getCenterY() - first);
    }

    /** The place under a point; of one beyond the edge the nearest at the edge. */
    PartSpot place(double x, double y) {
        if (!outline.disc()) {
            int around = (int) Math.round((x - box.getX()) / box.getWidth() * outline.degrees());
            return new PartSpot(
                    within(around, outline == Outline.HALF ? outline.degrees() : WHOLE - 1),
                    within((int) Math.round((y - box.getY()) / box.getHeight() * FULL), FULL));
        }
        double right = x - box.getCenterX();
        double down = y - box.getCenterY();
        double angle = outline == Outline.DISC ? Math.atan2(down, -right) : Math.atan2(right, -down);
        return new PartSpot(
                Math.floorMod((int) Math.round(Math.toDegrees(angle)), WHOLE),
                within((int) Math.round(Math.hypot(right, down) / (box.getWidth() / 2) * FULL), FULL));
    }

    /** Whether a point is on it, or close enough beside to be meant so. */
    boolean has(double x, double y, double beside) {
        return outline.disc()
                ? Point2D.distance(x, y, box.getCenterX(), box.getCenterY()) <= box.getWidth() / 2 + beside
                : x >= box.getX() - beside
                        && x <= box.getMaxX() + beside
                        && y >= box.getY() - beside
                        && y <= box.getMaxY() + beside;
    }

    /** A place to begin from where none is known: the middle. */
    PartSpot middle() {
        return place(box.getCenterX(), box.getCenterY());
    }

    private static int within(int value, int most) {
        return Math.max(0, Math.min(value, most));
    }
}
