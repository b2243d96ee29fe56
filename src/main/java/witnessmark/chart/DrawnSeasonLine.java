package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws a {@link SeasonLine} in a room of a width; its height follows from its rows. */
public final class DrawnSeasonLine {
    /** In pixels of the design. */
    private static final int NAMES = 78;

    private static final int HEAD = 22;
    private static final int ROW = 56;
    private static final int RIGHT = 8;
    private static final double[] RADIUS = {3.5, 6, 9};

    private final SeasonLine line;
    private final ChartStyle style;
    private final Color mark;
    private final double width;

    /** @param mark the colour of incidents */
    public DrawnSeasonLine(SeasonLine line, ChartStyle style, Color mark, double width) {
        this.line = line;
        this.style = style;
        this.mark = mark;
        this.width = width;
    }

    /** How high a season of so many rows is, in pixels of the design. */
    public static int height(int rows) {
        return HEAD + Math.max(1, rows) * ROW;
    }

    /**
     * Draws it from the upper left corner on.
     *
     * @param chosen the mark that is in hand, or -1; counted through all rows
     */
    public void draw(Graphics2D g, int chosen) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setFont(style.text());
        months(g);
        int at = 0;
        for (int i = 0; i < line.rows().size(); i++) {
            SeasonLine.Row row = line.rows().get(i);
            row(g, row, top(i));
            words(g, row, top(i));
            for (SeasonLine.Mark each : row.marks()) {
                mark(g, each, top(i), at == chosen);
                at++;
            }
        }
    }

    /** The mark under a point, counted through all rows; -1 for none. */
    public int at(double x, double y) {
        int at = 0;
        int found = -1;
        double nearest = px(13);
        for (int i = 0; i < line.rows().size(); i++) {
            for (SeasonLine.Mark each : line.rows().get(i).marks()) {
                double away = Math.hypot(x - middle(each.day()), y - centre(top(i)));
                if (away < nearest) {
                    nearest = away;
                    found = at;
                }
                at++;
            }
        }
        return found;
    }

    private void months(Graphics2D g) {
        g.setStroke(new BasicStroke((float) px(1)));
        for (SeasonLine.Month month : line.months()) {
            double x = Math.rint(x(month.day()));
            g.setColor(style.rule());
            g.draw(new Line2D.Double(x, px(HEAD), x, px(height(line.rows().size()))));
            g.setColor(style.ink2());
            g.drawString(month.name(), (float) (x + px(4)), (float) px(HEAD - 7));
        }
    }

    private void row(Graphics2D g, SeasonLine.Row row, double top) {
        g.setColor(style.rule());
        g.setStroke(new BasicStroke((float) px(1)));
        g.draw(new Line2D.Double(0, Math.rint(top), width - px(RIGHT), Math.rint(top)));
        g.setColor(style.ink());
        g.drawString(row.name(), 0, (float) (centre(top) + px(4)));
        g.draw(new Line2D.Double(px(NAMES), centre(top), width - px(RIGHT), centre(top)));
        double free = 0;
        for (SeasonLine.Band band : row.bands()) {
            double left = x(band.first());
            double wide = Math.max(px(5), x(band.last() + 1) - left);
            g.setColor(style.band());
            g.fill(new Rectangle2D.Double(left, top + px(18), wide, px(ROW - 18 - 4)));
            g.setColor(style.rule());
            g.draw(new Rectangle2D.Double(left, top + px(18), wide, px(ROW - 18 - 4)));
            double half = g.getFontMetrics().stringWidth(band.name()) / 2.0;
            double from = Math.min(left + wide / 2 - half, width - px(RIGHT) - 2 * half);
            if (from > free) {
                g.setColor(style.ink2());
                g.drawString(band.name(), (float) from, (float) (top + px(14)));
                free = from + 2 * half + px(6);
            }
        }
    }

    /** Words stand on the free side of their mark, over the line; where neither side is free they are left to the readout. */
    private void words(Graphics2D g, SeasonLine.Row row, double top) {
        FontMetrics letters = g.getFontMetrics();
        List<double[]> taken = new ArrayList<>();
        for (SeasonLine.Mark each : row.marks()) {
            double away = px(RADIUS[each.size().ordinal()] + 4);
            taken.add(new double[] {middle(each.day()) - away, middle(each.day()) + away});
        }
        for (SeasonLine.Mark each : row.marks()) {
            double wide = letters.stringWidth(each.beside());
            double away = px(RADIUS[each.size().ordinal()] + 5);
            double right = middle(each.day()) + away;
            double left = middle(each.day()) - away - wide;
            double at = free(taken, right, wide) ? right : free(taken, left, wide) ? left : -1;
            if (!each.beside().isEmpty() && at >= 0) {
                g.setColor(style.sheet());
                g.fill(new Rectangle2D.Double(at - px(2), centre(top) - px(8), wide + px(4), px(16)));
                g.setColor(style.ink());
                g.drawString(each.beside(), (float) at, (float) (centre(top) + px(4)));
                taken.add(new double[] {at - px(4), at + wide + px(4)});
            }
        }
    }

    private boolean free(List<double[]> taken, double from, double wide) {
        return from > px(NAMES)
                && from + wide < width - px(RIGHT)
                && taken.stream().noneMatch(each -> from < each[1] && from + wide > each[0]);
    }

    private void mark(Graphics2D g, SeasonLine.Mark each, double top, boolean inHand) {
        double r = px(RADIUS[each.size().ordinal()]);
        double x = middle(each.day());
        Rectangle2D box = new Rectangle2D.Double(x - r, centre(top) - r, 2 * r, 2 * r);
        java.awt.geom.Path2D diamond = new java.awt.geom.Path2D.Double();
        diamond.moveTo(x, box.getY());
        diamond.lineTo(box.getMaxX(), centre(top));
        diamond.lineTo(x, box.getMaxY());
        diamond.lineTo(box.getX(), centre(top));
        diamond.closePath();
        g.setColor(mark);
        g.fill(diamond);
        if (inHand) {
            g.setColor(style.ink());
            g.setStroke(new BasicStroke((float) px(1.6)));
            double out = r + px(4);
            g.draw(new Rectangle2D.Double(x - out, centre(top) - out, 2 * out, 2 * out));
        }
    }

    private double top(int row) {
        return px(HEAD + row * (double) ROW);
    }

    private double centre(double top) {
        return Math.rint(top + px(18 + (ROW - 18 - 4) / 2.0));
    }

    private double middle(long day) {
        return (x(day) + x(day + 1)) / 2;
    }

    private double x(long day) {
        double room = width - px(NAMES) - px(RIGHT);
        return px(NAMES) + room * Math.max(0, Math.min(1, line.share(day)));
    }

    private double px(double design) {
        return design * style.scale();
    }
}
