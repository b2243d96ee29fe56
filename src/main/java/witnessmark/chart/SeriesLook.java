package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The shape and the stroke of each line in colour, so that lines are told apart in black and white too. */
final class SeriesLook {
    private static final float[][] DASHES = {{}, {7, 4}, {2, 3}, {7, 3, 2, 3}};

    private SeriesLook() {}

    static BasicStroke stroke(int index, double scale) {
        float[] pattern = DASHES[index % DASHES.length];
        float width = (float) (2 * scale);
        if (pattern.length == 0) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
        }
        float[] scaled = new float[pattern.length];
        for (int i = 0; i < pattern.length; i++) {
            scaled[i] = (float) (pattern[i] * scale);
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, scaled, 0f);
    }

    static BasicStroke quiet(double scale) {
        return new BasicStroke((float) scale, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    /** Circle, square, triangle, diamond, about the origin. */
    static Shape shape(int index, double scale) {
        double half = 3.5 * scale;
        return switch (index % 4) {
            case 0 -> new Ellipse2D.Double(-half, -half, 2 * half, 2 * half);
            case 1 -> new Rectangle2D.Double(-half * 0.9, -half * 0.9, 1.8 * half, 1.8 * half);
            case 2 -> triangle(half * 1.15);
            default ->
                AffineTransform.getRotateInstance(Math.PI / 4)
                        .createTransformedShape(
                                new Rectangle2D.Double(-half * 0.85, -half * 0.85, 1.7 * half, 1.7 * half));
        };
    }

    private static Shape triangle(double half) {
        Path2D path = new Path2D.Double();
        path.moveTo(0, -half);
        path.lineTo(half, half * 0.8);
        path.lineTo(-half, half * 0.8);
        path.closePath();
        return path;
    }
}
