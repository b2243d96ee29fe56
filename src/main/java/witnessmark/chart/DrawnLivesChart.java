package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws a {@link LivesChart} in a room of a width; its height follows from how many lives there are. */
public final class DrawnLivesChart {
    /** In pixels of the design. */
    private static final int NAMES = 226;

    private static final int MARKS = 74;
    private static final int BESIDE = 170;
    private static final int ROW = 24;
    private static final int STRIP = 12;
    private static final int FOOT = 46;
    private static final float[] DASHES = {4, 3};

    private final LivesChart chart;
    private final ChartStyle style;
    private final Color fill;
    private final Color failed;
    private final double width;

    /**
     * @param fill the colour of what was lived
     * @param failed the colour of a failure, beside its shape
     */
    public DrawnLivesChart(LivesChart chart, ChartStyle style, Color fill, Color failed, double width) {
        this.chart = chart;
        this.style = style;
        this.fill = fill;
        this.failed = failed;
        this.width = width;
    }

    /** How high it is, in pixels of the design. */
    public static int height(LivesChart chart) {
        return chart.groups().stream().mapToInt(LivesChart.Group::rows).sum() * ROW + FOOT;
    }

    /** The strip under a height of the drawing, counted from the top; −1 for none. */
    public int at(double y) {
        int row = (int) Math.floor(y / px(ROW));
        int before = 0;
        for (LivesChart.Group group : chart.groups()) {
            if (row >= 1 && row <= group.strips().size()) {
                return before + row - 1;
            }
            row -= group.rows();
            before += group.strips().size();
        }
        return -1;
    }

    /** @param chosen the strip in hand, counted from the top, or −1 */
    public void draw(Graphics2D g, int chosen) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setFont(style.text());
        double foot = px(ROW)
                * chart.groups().stream().mapToInt(LivesChart.Group::rows).sum();
        scale(g, foot);
        int row = 0;
        int strip = 0;
        for (LivesChart.Group group : chart.groups()) {
            heading(g, group.name(), px(ROW) * row);
            if (group.strips().isEmpty()) {
                g.setColor(style.ink2());
                g.drawString(group.none(), (float) px(14), base(g.getFontMetrics(), px(ROW) * (row + 1)));
            }
            for (int i = 0; i < group.strips().size(); i++) {
                strip(g, group.strips().get(i), px(ROW) * (row + 1 + i), strip == chosen);
                strip++;
            }
            row += group.rows();
        }
        legend(g, foot + px(34));
    }

    private void scale(Graphics2D g, double foot) {
        FontMetrics letters = g.getFontMetrics();
        g.setStroke(new BasicStroke((float) px(1)));
        for (LifeRows.Tick tick : chart.ticks()) {
            double x = Math.rint(x(tick.at()));
            g.setColor(style.rule());
            g.draw(new Line2D.Double(x, px(ROW), x, foot));
            g.setColor(style.ink2());
            g.drawString(tick.label(), (float) (x - letters.stringWidth(tick.label()) / 2.0), (float) (foot + px(14)));
        }
        LifeRows.Tick limit = chart.limit();
        if (limit != null) {
            double x = Math.rint(x(limit.at()));
            g.setColor(style.ink());
            g.setStroke(dashed());
            g.draw(new Line2D.Double(x, px(ROW), x, foot));
            double half = letters.stringWidth(limit.label()) / 2.0;
            double left = Math.min(width - 2 * half, Math.max(x(0), x - half));
            g.drawString(limit.label(), (float) left, (float) (px(ROW) - px(5)));
        }
    }

    private void heading(Graphics2D g, String name, double top) {
        g.setFont(style.text().deriveFont(java.awt.Font.BOLD));
        FontMetrics letters = g.getFontMetrics();
        double room = chart.limit() == null || top > 0 ? width : x(chart.limit().at()) - px(60);
        g.setColor(style.ink());
        g.drawString(cut(letters, name, room - px(6)), (float) px(6), base(letters, top));
        g.setFont(style.text());
    }

    private void strip(Graphics2D g, LivesChart.Strip strip, double top, boolean chosen) {
        FontMetrics letters = g.getFontMetrics();
        if (chosen) {
            g.setColor(style.band());
            g.fill(new Rectangle2D.Double(0, top, width, px(ROW)));
        }
        float base = base(letters, top);
        g.setColor(style.ink());
        g.drawString(cut(letters, strip.name(), px(MARKS) - px(6)), (float) px(14), base);
        g.setColor(style.ink2());
        g.drawString(cut(letters, strip.where(), px(NAMES - MARKS) - px(22)), (float) px(MARKS + 14), base);
        double middle = top + px(ROW) / 2;
        double from = x(strip.from());
        double to = Math.max(from + px(1), x(strip.to()));
        body(g, strip, from, to, middle);
        end(g, strip.ended(), to, middle);
        g.setColor(strip.ended() == LivesChart.Ended.FAILED ? failed : style.ink());
        g.drawString(cut(letters, strip.beside(), px(BESIDE) - px(14)), (float) (width - px(BESIDE) + px(14)), base);
    }

    private void body(Graphics2D g, LivesChart.Strip strip, double from, double to, double middle) {
        double half = px(STRIP) / 2;
        g.setStroke(new BasicStroke((float) px(1)));
        if (strip.from() > 0) {
            g.setColor(style.ink2());
            g.setStroke(dashed());
            g.draw(new Line2D.Double(x(0), middle, from, middle));
        }
        Rectangle2D body = new Rectangle2D.Double(from, middle - half, to - from, 2 * half);
        if (strip.sure()) {
            g.setColor(fill);
            g.fill(body);
        } else {
            g.setColor(style.ink2());
            g.setStroke(dashed());
            g.draw(body);
        }
    }

    /** A cross for what failed, a bar across for what came off, an open arrow for what is still in. */
    private void end(Graphics2D g, LivesChart.Ended ended, double x, double middle) {
        double half = px(STRIP) / 2;
        switch (ended) {
            case FAILED -> {
                g.setColor(failed);
                g.setStroke(new BasicStroke((float) px(2.4)));
                double arm = half - px(0.5);
                double centre = x + half + px(2);
                g.draw(new Line2D.Double(centre - arm, middle - arm, centre + arm, middle + arm));
                g.draw(new Line2D.Double(centre - arm, middle + arm, centre + arm, middle - arm));
            }
            case CAME_OFF -> {
                g.setColor(style.ink());
                g.fill(new Rectangle2D.Double(x - px(1.25), middle - half - px(2), px(2.5), 2 * half + px(4)));
            }
            default -> {
                g.setColor(style.ink());
                g.setStroke(new BasicStroke((float) px(1.6)));
                Path2D arrow = new Path2D.Double();
                arrow.moveTo(x + px(1), middle - half);
                arrow.lineTo(x + px(1) + half, middle);
                arrow.lineTo(x + px(1), middle + half);
                g.draw(arrow);
            }
        }
    }

    private void legend(Graphics2D g, double middle) {
        FontMetrics letters = g.getFontMetrics();
        List<String> words = chart.legend();
        double x = x(0);
        for (LivesChart.Ended ended : LivesChart.Ended.values()) {
            String said = words.get(ended.ordinal());
            g.setColor(fill);
            g.fill(new Rectangle2D.Double(x, middle - px(STRIP) / 2, px(16), px(STRIP)));
            end(g, ended, x + px(16), middle);
            g.setColor(style.ink2());
            g.drawString(said, (float) (x + px(36)), (float) (middle + letters.getAscent() / 2.5));
            x += px(36) + letters.stringWidth(said) + px(20);
        }
    }

    private BasicStroke dashed() {
        float unit = (float) px(1);
        return new BasicStroke(
                1.2f * unit,
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10f,
                new float[] {DASHES[0] * unit, DASHES[1] * unit},
                0f);
    }

    private float base(FontMetrics letters, double top) {
        return (float) (top + px(ROW) / 2 + letters.getAscent() / 2.5);
    }

    private static String cut(FontMetrics letters, String text, double room) {
        String shown = text;
        while (shown.length() > 1 && letters.stringWidth(shown) > room) {
            shown = shown.substring(0, shown.length() - 2) + "…";
        }
        return shown;
    }

    private double x(double age) {
        return px(NAMES) + age / chart.scale() * Math.max(1, width - px(NAMES) - px(BESIDE));
    }

    private double px(double pixels) {
        return pixels * style.scale();
    }
}
