package witnessmark.desktop.faces;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceOutline;

/** Where places of a face lie on a drawing: its edges within a room, as large as fits. */
final class MapPlane {
    private static final double MILLIMETRE = 1_000_000;

    private final double length;
    private final double width;
    private final double scale;
    private final Rectangle2D box;
    private final boolean exhaustBelow;
    private final boolean frontLeft;

    MapPlane(FaceOutline outline, FaceKind kind, FaceTurn turn, Rectangle2D room) {
        length = outline.length().nanometres() / MILLIMETRE;
        width = outline.width().nanometres() / MILLIMETRE;
        scale = Math.max(0.01, Math.min(room.getWidth() / length, room.getHeight() / width));
        box = new Rectangle2D.Double(room.getX(), room.getY(), length * scale, width * scale);
        exhaustBelow = turn.exhaustBelow(outline, kind);
        frontLeft = turn.frontLeft();
    }

    Rectangle2D box() {
        return box;
    }

    /** Pixels to the millimetre. */
    double scale() {
        return scale;
    }

    boolean exhaustBelow() {
        return exhaustBelow;
    }

    boolean frontLeft() {
        return frontLeft;
    }

    double x(double millimetres) {
        return frontLeft ? box.getX() + millimetres * scale : box.getMaxX() - millimetres * scale;
    }

    double y(double millimetres) {
        return exhaustBelow ? box.getY() + millimetres * scale : box.getMaxY() - millimetres * scale;
    }

    /** The place of the face under a point of the drawing, in millimetres; it may lie off the face. */
    Point2D face(double x, double y) {
        return new Point2D.Double(
                (frontLeft ? x - box.getX() : box.getMaxX() - x) / scale,
                (exhaustBelow ? y - box.getY() : box.getMaxY() - y) / scale);
    }

    double length() {
        return length;
    }

    double width() {
        return width;
    }
}
