package witnessmark.desktop.beforewego;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;
import witnessmark.desktop.form.Palette;

/** A box on a list of things to do, ticked when done. Drawn on a square of 18 units. */
final class TickIcon implements Icon {
    private static final int SIDE = 18;

    private final boolean done;

    TickIcon(boolean done) {
        this.done = done;
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(SIDE);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(SIDE);
    }

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.translate(x, y);
        g.scale((double) getIconWidth() / SIDE, (double) getIconHeight() / SIDE);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Palette.FIELD_BORDER.colour());
        g.setStroke(new BasicStroke(1.5f));
        g.draw(new Rectangle2D.Double(1, 1, SIDE - 2, SIDE - 2));
        if (done) {
            g.setColor(Palette.INK.colour());
            g.setStroke(new BasicStroke(2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            Path2D tick = new Path2D.Double();
            tick.moveTo(4, 9);
            tick.lineTo(8, 13);
            tick.lineTo(14.5, 5);
            g.draw(tick);
        }
        g.dispose();
    }
}
