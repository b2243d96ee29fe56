package witnessmark.desktop.cases;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Palette;
import witnessmark.domain.CauseState;
import witnessmark.domain.Speaks;

/** A shape of its own for each way a finding speaks and each way a cause stands, so that none is told by colour. */
final class WeighShapes {
    private WeighShapes() {}

    /** How many of one shape stand beside each other: two where it speaks strongly. */
    static int count(Speaks speaks) {
        return Math.max(1, Math.abs(speaks.weight()));
    }

    /**
     * Draws how a finding speaks: full and pointing up for, hollow and pointing down against, a dash neither.
     *
     * @param x of the middle of all of it
     * @param size of one shape
     */
    static void draw(Graphics2D g, Speaks speaks, double x, double y, double size) {
        int many = count(speaks);
        double step = size * 1.2;
        double at = x - step * (many - 1) / 2;
        for (int i = 0; i < many; i++) {
            one(g, speaks.weight(), at + i * step, y, size);
        }
    }

    private static void one(Graphics2D g, int weight, double x, double y, double size) {
        double half = size / 2;
        g.setStroke(new BasicStroke((float) (size / 6)));
        if (weight > 0) {
            g.setColor(Palette.MARK.colour());
            g.fill(triangle(x, y, half, -1));
        } else if (weight < 0) {
            g.setColor(Palette.INK.colour());
            g.draw(triangle(x, y, half * 0.9, 1));
        } else {
            g.setColor(Palette.INK2.colour());
            g.draw(new Line2D.Double(x - half, y, x + half, y));
        }
    }

    private static Shape triangle(double x, double y, double half, int down) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - half, y - half * 0.85 * down);
        path.lineTo(x + half, y - half * 0.85 * down);
        path.lineTo(x, y + half * 0.85 * down);
        path.closePath();
        return path;
    }

    /** Draws how a cause stands: full main, half full contributing, empty open, crossed ruled out, a dash not called. */
    static void draw(Graphics2D g, @Nullable CauseState state, double x, double y, double size) {
        double half = size / 2;
        g.setStroke(new BasicStroke((float) (size / 7)));
        g.setColor(Palette.INK.colour());
        if (state == null) {
            g.draw(new Line2D.Double(x - half, y, x + half, y));
            return;
        }
        Rectangle2D box = new Rectangle2D.Double(x - half, y - half, size, size);
        switch (state) {
            case MAIN -> g.fill(box);
            case CONTRIBUTING -> {
                g.fill(new Rectangle2D.Double(x - half, y, size, half));
                g.draw(box);
            }
            case OPEN -> g.draw(box);
            case RULED_OUT -> {
                g.draw(box);
                g.draw(new Line2D.Double(x - half, y - half, x + half, y + half));
                g.draw(new Line2D.Double(x - half, y + half, x + half, y - half));
            }
        }
    }
}
