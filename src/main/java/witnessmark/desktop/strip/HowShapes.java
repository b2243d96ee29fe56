package witnessmark.desktop.strip;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Palette;
import witnessmark.domain.HowMarked;

/** A shape of its own for how far a mark has gone, so that none is told by colour: a column that fills, crossed when failed. */
final class HowShapes {
    private HowShapes() {}

    /** @param how null where nobody judged */
    static void draw(Graphics2D g, @Nullable HowMarked how, double x, double y, double size) {
        double half = size / 2;
        Rectangle2D box = new Rectangle2D.Double(x - half, y - half, size, size);
        g.setStroke(new BasicStroke((float) (size / 8)));
        g.setColor(Palette.INK2.colour());
        if (how == null) {
            g.draw(new Line2D.Double(x - half, y, x + half, y));
            return;
        }
        if (how == HowMarked.NONE) {
            tick(g, x, y, half);
            return;
        }
        double full = Math.min(1, how.ordinal() / 3.0) * size;
        g.setColor(how.compareTo(HowMarked.CLEAR) >= 0 ? Palette.MARK.colour() : Palette.INK.colour());
        g.fill(new Rectangle2D.Double(x - half, y + half - full, size, full));
        g.draw(box);
        if (how == HowMarked.FAILED) {
            g.setColor(Palette.SHEET.colour());
            g.draw(new Line2D.Double(x - half, y - half, x + half, y + half));
            g.draw(new Line2D.Double(x - half, y + half, x + half, y - half));
        }
    }

    private static void tick(Graphics2D g, double x, double y, double half) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - half * 0.8, y);
        path.lineTo(x - half * 0.2, y + half * 0.6);
        path.lineTo(x + half * 0.8, y - half * 0.6);
        g.draw(path);
    }

    /** It got worse since somebody looked last: an arrow up. */
    static void worse(Graphics2D g, double x, double y, double size) {
        double half = size / 2;
        g.setStroke(new BasicStroke((float) (size / 6)));
        g.setColor(Palette.MARK.colour());
        g.draw(new Line2D.Double(x, y + half, x, y - half));
        g.draw(new Line2D.Double(x, y - half, x - half * 0.6, y - half * 0.2));
        g.draw(new Line2D.Double(x, y - half, x + half * 0.6, y - half * 0.2));
    }
}
