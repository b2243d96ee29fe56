package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;

/**
 * Draws a curve of many samples: their least and most pixel by pixel where they are dense, so that it costs by the width
 * and no extreme is lost; the samples themselves where they are not.
 */
final class CurvePainter {
    /** From so many points to a pixel on they are drawn by their least and most. */
    private static final int DENSE = 2;

    private final Graphics2D g;
    private final Rectangle2D values;
    private final View view;

    /** @param values where it is drawn, and where it is cut off */
    CurvePainter(Graphics2D g, Rectangle2D values, View view) {
        this.g = g;
        this.values = values;
        this.view = view;
    }

    /** @param thick of a curve whose samples can be told apart */
    void draw(Sampled curve, Color ink, BasicStroke thick) {
        AffineTransform to = g.getTransform();
        int pieces = Math.max(1, (int) Math.round(values.getWidth() * Math.max(to.getScaleX(), 1e-3)));
        Shape clip = g.getClip();
        g.clip(values);
        g.setColor(ink);
        if (curve.count(view.from(), view.to()) > DENSE * pieces) {
            dense(curve, to, pieces);
        } else {
            sparse(curve, thick);
        }
        g.setClip(clip);
    }

    /** In whole pixels of the device, without smoothing: a thousand of them cost next to nothing. */
    private void dense(Sampled curve, AffineTransform to, int pieces) {
        double[] least = new double[pieces];
        double[] most = new double[pieces];
        curve.envelope(view.from(), view.to(), least, most);
        double left = values.getX() * to.getScaleX() + to.getTranslateX();
        int[] xs = new int[2 * pieces];
        int[] ys = new int[2 * pieces];
        int count = 0;
        Graphics2D device = (Graphics2D) g.create();
        device.setTransform(new AffineTransform());
        device.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        device.setStroke(new BasicStroke(1));
        for (int i = 0; i < pieces; i++) {
            if (Double.isNaN(least[i]) && Double.isNaN(most[i])) {
                line(device, xs, ys, count);
                count = 0;
                continue;
            }
            int x = (int) Math.floor(left) + i;
            int high = y(Double.isNaN(most[i]) ? least[i] : most[i], to);
            int low = Double.isNaN(least[i]) ? high : y(least[i], to);
            boolean lowFirst = count == 0 || Math.abs(ys[count - 1] - low) <= Math.abs(ys[count - 1] - high);
            xs[count] = x;
            ys[count++] = lowFirst ? low : high;
            xs[count] = x;
            ys[count++] = lowFirst ? high : low;
        }
        line(device, xs, ys, count);
        device.dispose();
    }

    private int y(double value, AffineTransform to) {
        double y = view.y(value, values) * to.getScaleY() + to.getTranslateY();
        return (int) Math.max(-1e6, Math.min(1e6, Math.rint(y)));
    }

    private static void line(Graphics2D device, int[] xs, int[] ys, int count) {
        if (count > 0) {
            device.drawPolyline(Arrays.copyOf(xs, count), Arrays.copyOf(ys, count), count);
        }
    }

    private void sparse(Sampled curve, BasicStroke thick) {
        Path2D path = new Path2D.Double();
        boolean[] apart = {true};
        curve.points(view.from(), view.to(), (time, least, most, hole) -> {
            if (Double.isNaN(least)) {
                apart[0] = true;
                return;
            }
            double x = view.x(time, values);
            double y = view.y(least, values);
            if (apart[0] || hole) {
                path.moveTo(x, y);
                path.lineTo(x, y); // a point alone is seen too
            } else {
                path.lineTo(x, y);
            }
            if (most != least) {
                path.lineTo(x, view.y(most, values));
            }
            apart[0] = false;
        });
        g.setStroke(thick);
        g.draw(path);
    }
}
