package witnessmark.chart;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Labels of lines across the whole width: each on its own line, above it where there is room, and beside another label
 * rather than over it.
 */
final class LevelLabels {
    private LevelLabels() {}

    /** @param y where a level stands */
    static void draw(
            Graphics2D g, ChartStyle style, List<Chart.Mark> levels, DoubleUnaryOperator y, Rectangle2D values) {
        draw(g, style, levels, y, values, place -> false);
    }

    /**
     * The same where something lies that labels are not to be written over, as long as there is room elsewhere.
     *
     * @param covered whether something lies in a place
     * @return where the labels stand
     */
    static List<Rectangle2D> draw(
            Graphics2D g,
            ChartStyle style,
            List<Chart.Mark> levels,
            DoubleUnaryOperator y,
            Rectangle2D values,
            Predicate<Rectangle2D> covered) {
        FontMetrics metrics = g.getFontMetrics(style.text());
        List<Chart.Mark> seen = levels.stream()
                .filter(level ->
                        y.applyAsDouble(level.at()) >= values.getY() && y.applyAsDouble(level.at()) <= values.getMaxY())
                .sorted(Comparator.comparingDouble(level -> y.applyAsDouble(level.at())))
                .toList();
        double[] at =
                seen.stream().mapToDouble(level -> y.applyAsDouble(level.at())).toArray();
        double[] wide = seen.stream()
                .mapToDouble(level -> metrics.stringWidth(level.label()))
                .toArray();
        List<Rectangle2D> places = placed(at, wide, metrics.getHeight(), style.scale(), values, covered);
        g.setFont(style.text());
        for (int i = 0; i < places.size(); i++) {
            Rectangle2D place = places.get(i);
            Lettered.clear(g, style, place);
            g.setColor(style.ink());
            g.drawString(seen.get(i).label(), (float) place.getX(), (float) (place.getMaxY() - metrics.getDescent()));
        }
        return places;
    }

    /**
     * Where labels stand: above their line at the left, else under it, else further to the right, where nothing lies over
     * another.
     *
     * @param at the heights of the lines, from the top
     * @param wide how wide each label is
     * @param high how high all of them are
     */
    static List<Rectangle2D> placed(double[] at, double[] wide, double high, double scale, Rectangle2D values) {
        return placed(at, wide, high, scale, values, place -> false);
    }

    private static List<Rectangle2D> placed(
            double[] at, double[] wide, double high, double scale, Rectangle2D values, Predicate<Rectangle2D> covered) {
        double gap = 3 * scale;
        List<Rectangle2D> taken = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            double left = values.getX() + 2 * gap;
            Rectangle2D best = null;
            Rectangle2D over = null;
            double step = Math.max(gap, high / 2);
            for (double x = left; best == null && x + wide[i] <= values.getMaxX(); x += step) {
                best = free(x, at[i], wide[i], high, gap, values, taken, covered);
                over = over == null ? free(x, at[i], wide[i], high, gap, values, taken, place -> false) : over;
            }
            best = best == null ? over : best;
            taken.add(best == null ? new Rectangle2D.Double(left, at[i] - gap - high, wide[i], high) : best);
        }
        return taken;
    }

    private static @Nullable Rectangle2D free(
            double x,
            double at,
            double wide,
            double high,
            double gap,
            Rectangle2D values,
            List<Rectangle2D> taken,
            Predicate<Rectangle2D> covered) {
        for (double top : new double[] {at - gap - high, at + gap}) {
            Rectangle2D place = new Rectangle2D.Double(x, top, wide, high);
            Rectangle2D room = new Rectangle2D.Double(x - 2 * gap, top, wide + 4 * gap, high);
            if (top >= values.getY()
                    && top + high <= values.getMaxY()
                    && taken.stream().noneMatch(room::intersects)
                    && !covered.test(place)) {
                return place;
            }
        }
        return null;
    }
}
