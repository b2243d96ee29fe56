package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a trace that can be drawn, looked into more closely, and gone over with one cross-hair. Drawn the same on a
 * window and a picture. Not for several threads.
 */
public final class DrawnTraceRows {
    private static final double LEFT = 50;
    private static final double RIGHT = 118;
    private static final double BETWEEN = 10;
    private static final double TICK_APART = 80;
    private static final double FIGURE_APART = 18;
    private static final double FLAGS = 16;
    private static final double LABEL = 20;
    private static final double EDGE = 4;
    /** A limit so near the top of what is to be in sight has its label above that. */
    private static final double LABELLED = 0.25;

    private final TraceRows rows;
    private final Stretch stretch;
    private TraceStyle style;
    private List<Rectangle2D> places = List.of();
    private final List<Rectangle2D> lettered = new ArrayList<>();

    public DrawnTraceRows(TraceRows rows, TraceStyle style) {
        this.rows = rows;
        this.style = style;
        this.stretch = new Stretch(0, Math.max(rows.last(), 1e-3), Math.max(rows.closest(), 1e-4));
    }

    public TraceRows rows() {
        return rows;
    }

    /** What is seen of the time. */
    public Stretch seen() {
        return stretch;
    }

    /** Draws with other colours and fonts from now on. */
    public void restyle(TraceStyle next) {
        style = next;
    }

    /** Where the values of each row stood in the last drawing. */
    public List<Rectangle2D> places() {
        return places;
    }

    /** The time under a point of the last drawing. */
    public double time(double x) {
        if (places.isEmpty()) {
            return stretch.from();
        }
        return time(x, places.get(0));
    }

    /** Where a time stood in the last drawing. */
    public double x(double time) {
        Rectangle2D any = places.get(0);
        return any.getX() + (time - stretch.from()) / stretch.width() * any.getWidth();
    }

    /**
     * Draws finding, note and rows into an area, all but the cross-hair.
     *
     * @param chosen the mark in hand, or null
     */
    public void draw(Graphics2D graphics, Rectangle2D area, TraceRows.@Nullable Mark chosen) {
        Graphics2D g = smooth(graphics);
        g.setColor(style.base().sheet());
        g.fill(area);
        Rectangle2D rest = Lettered.heading(g, style.base(), rows.finding(), rows.note(), area);
        places = laid(g, rest);
        lettered.clear();
        FontMetrics metrics = g.getFontMetrics(style.base().text());
        times(g, metrics);
        for (int i = 0; i < places.size(); i++) {
            row(g, rows.rows().get(i), places.get(i), chosen);
        }
        g.dispose();
    }

    private List<Rectangle2D> laid(Graphics2D g, Rectangle2D rest) {
        int count = rows.rows().size();
        double unit = style.scale();
        double below = g.getFontMetrics(style.base().text()).getHeight() + 6 * unit;
        double wide = Math.max(1, rest.getWidth() - (LEFT + RIGHT) * unit);
        double high = (rest.getHeight() - below - BETWEEN * unit * Math.max(0, count - 1)) / Math.max(1, count);
        List<Rectangle2D> laid = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double top = rest.getY() + i * (high + BETWEEN * unit);
            laid.add(new Rectangle2D.Double(
                    Math.rint(rest.getX() + LEFT * unit), Math.rint(top), Math.rint(wide), Math.max(1, high)));
        }
        return laid;
    }

    /** With room above what is to be in sight where a flag or the label of a limit stands there. */
    private View view(TraceRows.Row row, Rectangle2D place) {
        double top = row.high() - LABELLED * (row.high() - row.low());
        boolean flags = rows.marks().stream().anyMatch(mark -> mark.row().equals(row.id()));
        boolean label = row.levels().stream().anyMatch(level -> level.at() >= top);
        double above = (label ? LABEL : flags ? FLAGS : EDGE) * style.scale();
        double below = EDGE * style.scale();
        double each = (row.high() - row.low()) / Math.max(1, place.getHeight() - above - below);
        return new View(stretch.from(), stretch.to(), row.low() - below * each, row.high() + above * each);
    }

    private void times(Graphics2D g, FontMetrics metrics) {
        if (places.isEmpty()) {
            return;
        }
        Rectangle2D last = places.get(places.size() - 1);
        int most = Math.max(2, (int) (last.getWidth() / (TICK_APART * style.scale())));
        g.setFont(style.base().text());
        for (double tick : TimeTicks.of(stretch.from(), stretch.to(), most)) {
            double x = x(tick);
            g.setColor(style.base().rule());
            g.setStroke(hair());
            for (Rectangle2D place : places) {
                g.draw(new Line2D.Double(x, place.getY(), x, place.getMaxY()));
            }
            String words = rows.time().apply(tick);
            g.setColor(style.base().ink2());
            g.drawString(words, (float) (x - metrics.stringWidth(words) / 2.0), (float)
                    (last.getMaxY() + metrics.getAscent() + 4 * style.scale()));
        }
    }

    private void row(Graphics2D g, TraceRows.Row row, Rectangle2D place, TraceRows.@Nullable Mark chosen) {
        View view = view(row, place);
        FontMetrics metrics = g.getFontMetrics(style.base().text());
        washes(g, row, place, view, chosen);
        figures(g, place, view, row, metrics);
        g.setStroke(new BasicStroke((float) (1.5 * style.scale())));
        g.setColor(style.base().ink());
        for (Chart.Mark level : row.levels()) {
            double y = view.y(level.at(), place);
            g.draw(new Line2D.Double(place.getX(), y, place.getMaxX(), y));
        }
        CurvePainter painter = new CurvePainter(g, place, view);
        Sampled floor = row.floor();
        if (floor != null) {
            painter.draw(floor, style.base().ink2(), new BasicStroke((float) style.scale()));
        }
        for (int i = row.curves().size() - 1; i >= 0; i--) {
            painter.draw(
                    row.curves().get(i),
                    ink(i),
                    new BasicStroke((float) (1.5 * style.scale()), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        }
        flags(g, row, place, chosen);
        List<Rectangle2D> flags = List.copyOf(lettered);
        lettered.addAll(LevelLabels.draw(
                g,
                style.base(),
                row.levels(),
                at -> view.y(at, place),
                place,
                words -> flags.stream().anyMatch(words::intersects) || crossed(row, view, place, words)));
        g.setFont(style.base().text());
        g.setColor(style.base().ink2());
        double y = place.getY() + metrics.getAscent();
        for (String words : Lettered.wrapped(row.name(), metrics, (RIGHT - 12) * style.scale())) {
            g.drawString(words, (float) (place.getMaxX() + 10 * style.scale()), (float) y);
            y += metrics.getHeight();
        }
    }

    /** Whether a curve of the row goes through words. */
    private boolean crossed(TraceRows.Row row, View view, Rectangle2D place, Rectangle2D words) {
        double[] least = new double[1];
        double[] most = new double[1];
        for (Sampled curve : row.curves()) {
            curve.envelope(time(words.getX(), place), time(words.getMaxX(), place), least, most);
            if (view.y(most[0], place) <= words.getMaxY() && view.y(least[0], place) >= words.getY()) {
                return true;
            }
        }
        return false;
    }

    private double time(double x, Rectangle2D place) {
        return stretch.from() + (x - place.getX()) / place.getWidth() * stretch.width();
    }

    private void figures(Graphics2D g, Rectangle2D place, View view, TraceRows.Row row, FontMetrics metrics) {
        double most = Math.max(1, place.getHeight() / (FIGURE_APART * style.scale()));
        double step = Ticks.step(view.high() - view.low());
        while ((view.high() - view.low()) / step > most) {
            step *= step(step);
        }
        g.setFont(style.base().text());
        for (long i = (long) Math.ceil(view.low() / step); i * step <= view.high(); i++) {
            double y = view.y(i * step, place);
            g.setColor(style.base().rule());
            g.setStroke(hair());
            g.draw(new Line2D.Double(place.getX(), y, place.getMaxX(), y));
            String words = row.tick().apply(i * step);
            g.setColor(style.base().ink2());
            g.drawString(words, (float) (place.getX() - metrics.stringWidth(words) - 8 * style.scale()), (float)
                    (y + (metrics.getAscent() - metrics.getDescent()) / 2.0));
        }
    }

    /** From 1 to 2 to 5 to 10. */
    private static double step(double step) {
        double digit = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
        return digit > 1.5 && digit < 3 ? 2.5 : 2;
    }

    private boolean isIn(TraceRows.Mark mark, TraceRows.Row row) {
        return mark.row().equals(row.id()) && mark.at() + mark.lasted() >= stretch.from() && mark.at() <= stretch.to();
    }

    private void washes(
            Graphics2D g, TraceRows.Row row, Rectangle2D place, View view, TraceRows.@Nullable Mark chosen) {
        for (TraceRows.Mark mark : rows.marks()) {
            if (isIn(mark, row) || mark.equals(chosen)) {
                double from = Math.max(place.getX(), view.x(mark.at(), place));
                double to = Math.min(place.getMaxX(), view.x(mark.at() + mark.lasted(), place));
                g.setColor(mark.engine() ? style.wash() : style.base().band());
                g.fill(new Rectangle2D.Double(
                        from, place.getY(), Math.max(2 * style.scale(), to - from), place.getHeight()));
            }
        }
    }

    /** At the top of its row: a filled flag for what the engine did, a bare square for what is wrong with the trace. */
    private void flags(Graphics2D g, TraceRows.Row row, Rectangle2D place, TraceRows.@Nullable Mark chosen) {
        double size = 5 * style.scale();
        FontMetrics metrics = g.getFontMetrics(style.base().text());
        double free = place.getX();
        g.setFont(style.base().text());
        for (TraceRows.Mark mark : rows.marks()) {
            if (!isIn(mark, row)) {
                continue;
            }
            double x = Math.max(place.getX(), Math.min(place.getMaxX(), x(rows.worst(mark))));
            g.setColor(mark.engine() ? style.over() : style.base().ink2());
            if (mark.engine()) {
                Path2D flag = new Path2D.Double();
                flag.moveTo(x - size, place.getY());
                flag.lineTo(x + size, place.getY());
                flag.lineTo(x, place.getY() + 1.6 * size);
                flag.closePath();
                g.fill(flag);
            } else {
                g.setStroke(new BasicStroke((float) (1.2 * style.scale())));
                g.draw(new Rectangle2D.Double(x - size / 2, place.getY() + 1, size, size));
            }
            double from = x + 1.8 * size;
            double wide = metrics.stringWidth(mark.label());
            boolean fits = from >= free && from + wide <= place.getMaxX();
            if (fits && (mark.engine() || mark.equals(chosen))) {
                Rectangle2D words = new Rectangle2D.Double(from, place.getY(), wide, metrics.getHeight());
                lettered.add(words);
                Lettered.clear(g, style.base(), words);
                g.setColor(mark.engine() ? style.over() : style.base().ink2());
                g.drawString(mark.label(), (float) from, (float) (place.getY() + metrics.getAscent()));
                free = from + wide + 2 * size;
            }
        }
    }

    /** Draws the cross-hair over the last drawing: a line through all rows, and what each says there at its right. */
    public void hair(Graphics2D graphics, double time) {
        if (places.isEmpty() || time < stretch.from() || time > stretch.to()) {
            return;
        }
        Graphics2D g = smooth(graphics);
        double x = x(time);
        FontMetrics metrics = g.getFontMetrics(style.base().title());
        double unit = style.scale();
        for (int i = 0; i < places.size(); i++) {
            Rectangle2D place = places.get(i);
            TraceRows.Row row = rows.rows().get(i);
            View view = view(row, place);
            g.setColor(style.hair());
            g.setStroke(new BasicStroke((float) unit));
            upright(g, x, place);
            double y = place.getMaxY() - metrics.getDescent() - (row.curves().size() - 1) * metrics.getHeight();
            for (int curve = 0; curve < row.curves().size(); curve++) {
                Sampled of = row.curves().get(curve);
                figure(g, row, value(row, of, time), ink(curve), place.getMaxX() + 10 * unit, y);
                y += metrics.getHeight();
                double least = of.least(time);
                if (!Double.isNaN(least)) {
                    double at = view.y(least, place);
                    g.setColor(ink(curve));
                    g.fill(new Rectangle2D.Double(x - 2.5 * unit, at - 2.5 * unit, 5 * unit, 5 * unit));
                }
            }
        }
        g.dispose();
    }

    /** From top to bottom, but not through words that stand there. */
    private void upright(Graphics2D g, double x, Rectangle2D place) {
        double edge = 2 * style.scale();
        double from = place.getY();
        List<Rectangle2D> words = lettered.stream()
                .filter(each -> each.getX() - edge <= x && x <= each.getMaxX() + edge && place.intersects(each))
                .sorted(Comparator.comparingDouble(Rectangle2D::getY))
                .toList();
        for (Rectangle2D each : words) {
            if (each.getY() > from) {
                g.draw(new Line2D.Double(x, from, x, each.getY()));
            }
            from = Math.max(from, each.getMaxY());
        }
        g.draw(new Line2D.Double(x, from, x, place.getMaxY()));
    }

    private void figure(Graphics2D g, TraceRows.Row row, String value, Color ink, double x, double y) {
        g.setFont(style.base().title());
        g.setColor(ink);
        g.drawString(value, (float) x, (float) y);
        double wide = g.getFontMetrics().stringWidth(value) + 4 * style.scale();
        g.setFont(style.base().text());
        g.setColor(style.base().ink2());
        g.drawString(row.unit(), (float) (x + wide), (float) y);
    }

    /** What a curve says at a time: a figure, or from the least to the most where its samples are not at hand. */
    public static String value(TraceRows.Row row, Sampled of, double time) {
        double least = of.least(time);
        double most = of.most(time);
        if (Double.isNaN(least)) {
            return "\u2013";
        }
        String low = row.figure().apply(least);
        return least == most ? low : low + "\u2013" + row.figure().apply(most);
    }

    /** The colour of the curves of a run, the one in hand first. */
    public Color ink(int curve) {
        return style.base().series().get(curve);
    }

    /**
     * As a picture with a margin, what is seen of it.
     *
     * @param fine pixels of the picture for one of the design
     */
    public BufferedImage picture(int width, int height, int fine) {
        BufferedImage image = new BufferedImage(width * fine, height * fine, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(fine, fine);
        g.setColor(style.base().sheet());
        g.fillRect(0, 0, width, height);
        int margin = 16;
        List<Rectangle2D> before = places;
        draw(g, new Rectangle2D.Double(margin, margin, width - 2.0 * margin, height - 2.0 * margin), null);
        places = before;
        g.dispose();
        return image;
    }

    private BasicStroke hair() {
        return new BasicStroke((float) style.scale());
    }

    private static Graphics2D smooth(Graphics2D graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        return g;
    }
}
