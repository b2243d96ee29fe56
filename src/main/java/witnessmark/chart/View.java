package witnessmark.chart;

import java.awt.geom.Rectangle2D;

/**
 * The part of a chart that is seen.
 *
 * @param from least place across
 * @param to greatest place across
 * @param low least height
 * @param high greatest height
 */
record View(double from, double to, double low, double high) {
    double x(double across, Rectangle2D values) {
        return values.getX() + (across - from) / (to - from) * values.getWidth();
    }

    double y(double height, Rectangle2D values) {
        return values.getMaxY() - (height - low) / (high - low) * values.getHeight();
    }

    double across(double x, Rectangle2D values) {
        return from + (x - values.getX()) / values.getWidth() * (to - from);
    }

    boolean shows(double across) {
        return from <= across && across <= to;
    }

    /** How high a line is where it leaves the view at the right or ends; not a number when it is not in view. */
    double endOf(Line line) {
        Dot last = null;
        for (Dot dot : line.dots()) {
            if (dot.across() > to) {
                return last == null ? Double.NaN : between(line, last, dot);
            }
            last = dot;
        }
        return last == null || last.across() < from ? Double.NaN : last.height();
    }

    private double between(Line line, Dot left, Dot right) {
        if (line.path() == Line.Path.STEP) {
            return left.height();
        }
        double share = (to - left.across()) / (right.across() - left.across());
        return left.height() + share * (right.height() - left.height());
    }
}
