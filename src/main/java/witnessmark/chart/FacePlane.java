package witnessmark.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Where places of a face lie on a drawing: its edges within a room, as large as fits. */
public final class FacePlane {
    private final double length;
    private final double width;
    private final double scale;
    private final Rectangle2D box;
    private final boolean exhaustBelow;
    private final boolean frontLeft;

    /**
     * @param exhaustBelow whether the exhaust edge is the lower one
     * @param frontLeft whether the front end lies to the left
     */
    public FacePlane(FaceMap.Edges edges, boolean exhaustBelow, boolean frontLeft, Rectangle2D room) {
        this.length = edges.length();
        this.width = edges.width();
        this.scale = Math.max(0.01, Math.min(room.getWidth() / length, room.getHeight() / width));
        this.box = new Rectangle2D.Double(room.getX(), room.getY(), length * scale, width * scale);
        this.exhaustBelow = exhaustBelow;
        this.frontLeft = frontLeft;
    }

    /** The edges on the drawing. */
    public Rectangle2D box() {
        return box;
    }

    /** Of the drawing to the millimetre. */
    public double scale() {
        return scale;
    }

    public boolean exhaustBelow() {
        return exhaustBelow;
    }

    public boolean frontLeft() {
        return frontLeft;
    }

    public double x(double millimetres) {
        return frontLeft ? box.getX() + millimetres * scale : box.getMaxX() - millimetres * scale;
    }

    public double y(double millimetres) {
        return exhaustBelow ? box.getY() + millimetres * scale : box.getMaxY() - millimetres * scale;
    }

    /** The place of the face under a point of the drawing, in millimetres; it may lie off the face. */
    public Point2D face(double x, double y) {
        return new Point2D.Double(
                (frontLeft ? x - box.getX() : box.getMaxX() - x) / scale,
                (exhaustBelow ? y - box.getY() : box.getMaxY() - y) / scale);
    }

    /** Whether a place lies on the face. */
    public boolean has(double x, double y) {
        return x >= 0 && y >= 0 && x < length && y < width;
    }

    public double length() {
        return length;
    }

    public double width() {
        return width;
    }
}
