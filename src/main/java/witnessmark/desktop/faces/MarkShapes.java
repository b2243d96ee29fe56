package witnessmark.desktop.faces;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import witnessmark.domain.FaceMarkKind;

/** A shape of its own for every kind of mark, about the origin, so that none is told by colour. */
final class MarkShapes {
    private MarkShapes() {}

    /** @param half half its size */
    static Shape of(FaceMarkKind kind, double half) {
        return switch (kind) {
            case LOW -> polyline(half, -1, -0.6, 0, 0.8, 1, -0.6);
            case PROUD -> polyline(half, -1, 0.6, 0, -0.8, 1, 0.6);
            case SHADOW -> two(new Ellipse2D.Double(-half, -half * 0.5, 2 * half, half), line(half, -1, 0, 1, 0));
            case NO_BLUE -> new Ellipse2D.Double(-half * 0.8, -half * 0.8, half * 1.6, half * 1.6);
            case GAS_TRACK -> polyline(half, -1, 0, -0.5, -0.8, 0, 0.8, 0.5, -0.8, 1, 0);
            case SPLIT_RING -> new Arc2D.Double(-half * 0.9, -half * 0.9, half * 1.8, half * 1.8, 30, 300, Arc2D.OPEN);
            case UNSEALED -> two(line(half, -0.9, -0.9, 0.9, 0.9), line(half, -0.9, 0.9, 0.9, -0.9));
            case EATEN -> closed(half, -0.9, 0.8, 0, -0.9, 0.9, 0.8);
            case CRACK -> polyline(half, -0.3, -1, 0.3, -0.3, -0.3, 0.2, 0.3, 1);
            case WELD ->
                two(
                        line(half, -1, 0.6, -0.2, -0.6),
                        two(line(half, -0.4, 0.6, 0.4, -0.6), line(half, 0.2, 0.6, 1, -0.6)));
            case SOFT ->
                two(
                        new Ellipse2D.Double(-half * 0.9, -half * 0.9, half * 1.8, half * 1.8),
                        new Ellipse2D.Double(-half * 0.4, -half * 0.4, half * 0.8, half * 0.8));
            case PISTON_CONTACT ->
                two(
                        new Arc2D.Double(-half, -half * 0.8, half * 2, half * 2, 20, 140, Arc2D.OPEN),
                        new Arc2D.Double(-half * 0.6, -half * 0.4, half * 1.2, half * 1.2, 20, 140, Arc2D.OPEN));
        };
    }

    private static Path2D line(double half, double... at) {
        return polyline(half, at);
    }

    private static Path2D polyline(double half, double... at) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < at.length; i += 2) {
            if (i == 0) {
                path.moveTo(at[0] * half, at[1] * half);
            } else {
                path.lineTo(at[i] * half, at[i + 1] * half);
            }
        }
        return path;
    }

    private static Path2D closed(double half, double... at) {
        Path2D path = polyline(half, at);
        path.closePath();
        return path;
    }

    private static Path2D two(Shape one, Shape other) {
        Path2D path = new Path2D.Double(one);
        path.append(other, false);
        return path;
    }
}
