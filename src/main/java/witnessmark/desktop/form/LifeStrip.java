package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/**
 * How much of a life is used: solid the run so far, hatched what the run or event adds, a seam at the limit. The scale
 * ends at 1.35 times the limit, so that the seams of a list stand in one column; what runs off it ends in a break.
 */
public final class LifeStrip extends JPanel {
    /** Where the scale ends, in limits. */
    public static final double SCALE_END = 1.35;

    private static final int BAR = 10;
    private static final int HEIGHT = 20;

    private Life life;
    private SeamState state;

    /** @param about what the strip says, for screen readers: "16.2 of 15 hours, 1.3 more this event" */
    public LifeStrip(Life life, SeamState state, String about) {
        setOpaque(false);
        this.life = life;
        this.state = state;
        show(life, state, about);
    }

    public void show(Life next, SeamState nextState, String about) {
        life = next;
        state = nextState;
        getAccessibleContext().setAccessibleName(about);
        repaint();
    }

    public Life life() {
        return life;
    }

    @Override
    public Dimension getPreferredSize() {
        return UIScale.scale(new Dimension(188, HEIGHT));
    }

    @Override
    public Dimension getMinimumSize() {
        return UIScale.scale(new Dimension(60, HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double top = (getHeight() - bar()) / 2.0;
        Double ran = life.ran();
        Double limit = life.limit();
        if (ran == null || limit == null) {
            paintNotKnown(g, top);
        } else {
            paintKnown(g, top, ran / limit, life.adds() / limit);
        }
        g.dispose();
    }

    private void paintNotKnown(Graphics2D g, double top) {
        g.setColor(Palette.NOT_KNOWN.colour());
        float unit = UIScale.scale(1f);
        g.setStroke(new BasicStroke(
                1.25f * unit, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, new float[] {4 * unit, 3 * unit}, 0f));
        g.draw(new Rectangle2D.Double(0.5 * unit, top + 0.5 * unit, at(1) - unit, bar() - unit));
    }

    private void paintKnown(Graphics2D g, double top, double ran, double adds) {
        fill(g, Palette.TRACK.colour(), 0, 1, top);
        fill(g, Palette.WITHIN.colour(), 0, Math.min(ran, 1), top);
        fill(g, Palette.OVER_FILL.colour(), 1, Math.min(ran, SCALE_END), top);
        double end = ran + adds;
        if (ran < 1) {
            Palette fill = state == SeamState.WITHIN ? Palette.WITHIN : Palette.DUE_FILL;
            Palette line = state == SeamState.WITHIN ? Palette.WITHIN : Palette.DUE;
            hatch(g, fill.colour(), line.colour(), ran, Math.min(end, 1), top);
        }
        hatch(g, Palette.OVER_FILL.colour(), Palette.OVER.colour(), Math.max(ran, 1), Math.min(end, SCALE_END), top);
        g.setColor(Palette.SEAM.colour());
        double unit = UIScale.scale(1f);
        g.fill(new Rectangle2D.Double(
                at(1) - unit, (getHeight() - UIScale.scale(HEIGHT)) / 2.0, 2 * unit, scaled(HEIGHT)));
        if (end > SCALE_END) {
            paintBreak(g, top);
        }
    }

    private void fill(Graphics2D g, Color colour, double from, double to, double top) {
        if (to > from) {
            g.setColor(colour);
            g.fill(new Rectangle2D.Double(at(from), top, at(to) - at(from), bar()));
        }
    }

    private void hatch(Graphics2D g, Color ink, Color outline, double from, double to, double top) {
        double wide = at(to) - at(from);
        if (wide < 1) {
            return;
        }
        double unit = UIScale.scale(1f);
        Rectangle2D box = new Rectangle2D.Double(at(from), top, wide, bar());
        g.setColor(Palette.SHEET.colour());
        g.fill(box);
        @Nullable Shape before = g.getClip();
        g.clip(box);
        g.setColor(ink);
        g.setStroke(new BasicStroke((float) (1.9 * unit)));
        for (double x = box.getX() - bar(); x < box.getMaxX() + bar(); x += 4.5 * unit) {
            g.draw(new Line2D.Double(x, top + bar(), x + bar(), top));
        }
        g.setClip(before);
        g.setColor(outline);
        g.setStroke(new BasicStroke((float) (1.25 * unit)));
        g.draw(new Rectangle2D.Double(
                box.getX() + 0.6 * unit, top + 0.6 * unit, Math.max(0, wide - 1.2 * unit), bar() - 1.2 * unit));
    }

    private void paintBreak(Graphics2D g, double top) {
        double unit = UIScale.scale(1f);
        g.setColor(Palette.SHEET.colour());
        g.setStroke(new BasicStroke((float) (1.6 * unit)));
        for (double back : new double[] {5, 9}) {
            double x = getWidth() - back * unit;
            g.draw(new Line2D.Double(x - 2 * unit, top + bar() + unit, x + 2 * unit, top - unit));
        }
    }

    private double at(double limits) {
        return Math.rint(getWidth() * limits / SCALE_END);
    }

    private static double bar() {
        return scaled(BAR);
    }

    private static double scaled(int length) {
        return UIScale.scale((float) length);
    }
}
