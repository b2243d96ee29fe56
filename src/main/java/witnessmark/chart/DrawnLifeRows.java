package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Draws {@link LifeRows} in a room of a width; their height follows from how many there are. */
public final class DrawnLifeRows {
    /** In pixels of the design. */
    private static final int NAMES = 150;

    private static final int BESIDE = 150;
    private static final int FOOT = 26;
    private static final int ROW = 30;
    private static final int STRIP = 12;

    private final LifeRows rows;
    private final ChartStyle style;
    private final Color fill;
    private final double width;

    /** @param fill the colour of what counts */
    public DrawnLifeRows(LifeRows rows, ChartStyle style, Color fill, double width) {
        this.rows = rows;
        this.style = style;
        this.fill = fill;
        this.width = width;
    }

    /** How high so many rows are, in pixels of the design. */
    public static int height(int rows) {
        return Math.max(1, rows) * ROW + FOOT;
    }

    /** The row under a height of the drawing; −1 for none. */
    public int at(double y) {
        int row = (int) Math.floor(y / px(ROW));
        return row >= 0 && row < rows.rows().size() ? row : -1;
    }

    /** @param chosen the row in hand, or −1 */
    public void draw(Graphics2D g, int chosen) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setFont(style.text());
        ticks(g);
        for (int i = 0; i < rows.rows().size(); i++) {
            row(g, rows.rows().get(i), px(ROW) * i, i == chosen);
        }
    }

    private void ticks(Graphics2D g) {
        double foot = px(ROW) * Math.max(1, rows.rows().size());
        g.setStroke(new BasicStroke((float) px(1)));
        for (LifeRows.Tick tick : rows.ticks()) {
            double x = Math.rint(x(tick.at()));
            g.setColor(style.rule());
            g.draw(new Line2D.Double(x, 0, x, foot));
            g.setColor(style.ink2());
            double half = g.getFontMetrics().stringWidth(tick.label()) / 2.0;
            g.drawString(tick.label(), (float) (x - half), (float) (foot + px(15)));
        }
    }

    private void row(Graphics2D g, LifeRows.Row row, double top, boolean chosen) {
        FontMetrics letters = g.getFontMetrics();
        double middle = top + px(ROW) / 2;
        float base = (float) (middle + letters.getAscent() / 2.5);
        if (chosen) {
            g.setColor(style.band());
            g.fill(new Rectangle2D.Double(0, top, width, px(ROW)));
        }
        g.setColor(style.ink());
        g.drawString(cut(letters, row.name(), px(NAMES) - px(8)), 0, base);
        double left = x(0);
        double from = x(Math.min(row.since(), row.until()));
        double to = Math.max(from, x(row.until()));
        double half = px(STRIP) / 2;
        g.setColor(style.ink2());
        g.setStroke(new BasicStroke((float) px(1)));
        g.draw(new Rectangle2D.Double(left, middle - half, Math.max(px(1), from - left), 2 * half));
        g.setColor(fill);
        g.fill(new Rectangle2D.Double(from, middle - half, Math.max(px(2), to - from), 2 * half));
        g.setColor(style.ink());
        for (LifeRows.Seam seam : row.seams()) {
            g.fill(new Rectangle2D.Double(x(seam.at()) - px(1.25), middle - half - px(4), px(2.5), 2 * half + px(8)));
        }
        for (LifeRows.Seam mark : row.marks()) {
            g.fill(diamond(x(mark.at()), middle - half - px(3)));
        }
        g.setColor(style.ink());
        g.drawString(cut(letters, row.beside(), px(BESIDE) - px(12)), (float) (width - px(BESIDE) + px(12)), base);
    }

    private Path2D diamond(double x, double y) {
        double half = px(4.5);
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - half);
        path.lineTo(x + half, y);
        path.lineTo(x, y + half);
        path.lineTo(x - half, y);
        path.closePath();
        return path;
    }

    private static String cut(FontMetrics letters, String text, double room) {
        String shown = text;
        while (shown.length() > 1 && letters.stringWidth(shown) > room) {
            shown = shown.substring(0, shown.length() - 2) + "…";
        }
        return shown;
    }

    private double x(double hours) {
        return px(NAMES) + hours / rows.scale() * Math.max(1, width - px(NAMES) - px(BESIDE));
    }

    private double px(double pixels) {
        return pixels * style.scale();
    }
}
