package witnessmark.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import javax.imageio.ImageIO;

/**
 * A chart that can be drawn, looked into more closely, and pointed at. It is drawn the same on a window, a picture and
 * paper; another style may be given at any time. Not for use by several threads.
 */
public final class DrawnChart {
    /** How far in somebody can look: a thousandth of the whole. */
    private static final double CLOSEST = 0.001;

    private static final double HEADROOM = 1.08;

    private final Chart chart;
    private final Plotted plotted;
    private ChartStyle style;
    private final View whole;
    private final Stretch stretch;
    private Rectangle2D values = new Rectangle2D.Double(0, 0, 1, 1);

    /**
     * A point of a line.
     *
     * @param line which line, from 0
     * @param dot which of its points, from 0
     */
    public record Place(int line, int dot) {}

    public DrawnChart(Chart chart, ChartStyle style) {
        this.chart = chart;
        this.plotted = new Plotted(chart);
        this.style = style;
        this.whole = whole();
        this.stretch = new Stretch(whole.from(), whole.to(), (whole.to() - whole.from()) * CLOSEST);
    }

    public Chart chart() {
        return chart;
    }

    /** Draws it with other colours and fonts from now on. */
    public void restyle(ChartStyle next) {
        style = next;
    }

    // What is seen

    /** Shows everything. */
    public void showAll() {
        stretch.showAll();
    }

    /**
     * Looks closer or from further away.
     *
     * @param factor less than 1 for closer
     * @param about the place across that stays where it is
     */
    public void zoom(double factor, double about) {
        stretch.zoom(factor, about);
    }

    /** Moves what is seen by a share of its width, to the right when more than 0. */
    public void pan(double share) {
        stretch.pan(share);
    }

    /** Moves what is seen just so far that a place across is in it. */
    public void bringIntoView(double across) {
        stretch.bringIntoView(across);
    }

    /** Sees from one place across to another, as far as there is something. */
    public void see(double from, double to) {
        stretch.see(from, to);
    }

    /** The least place across that is seen. */
    public double from() {
        return stretch.from();
    }

    /** The greatest place across that is seen. */
    public double to() {
        return stretch.to();
    }

    /** The place across under a point of the last drawing. */
    public double across(double x) {
        return view().across(x, values);
    }

    // Pointing at it

    /** Where a point of a line stood in the last drawing. */
    public Point2D at(Place place) {
        Dot dot = chart.lines().get(place.line()).dots().get(place.dot());
        View view = view();
        return new Point2D.Double(view.x(dot.across(), values), view.y(dot.height(), values));
    }

    /** Where the values stood in the last drawing. */
    public Rectangle2D values() {
        return (Rectangle2D) values.clone();
    }

    /** The point of a line nearest to a point of the last drawing, if one lies within a distance. */
    public Optional<Place> nearest(double x, double y, double within) {
        Place best = null;
        View view = view();
        double least = within;
        for (int line = 0; line < chart.lines().size(); line++) {
            for (int dot = 0; dot < chart.lines().get(line).dots().size(); dot++) {
                Place place = new Place(line, dot);
                double away = at(place).distance(x, y);
                if (away <= least && view.shows(dot(place).across()) && (best == null || away < least)) {
                    best = place;
                    least = away;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The point at a place. */
    public Dot dot(Place place) {
        return chart.lines().get(place.line()).dots().get(place.dot());
    }

    /** The colour a line is drawn in. */
    public Color ink(int line) {
        if (chart.lines().get(line).quiet()) {
            return style.ink2();
        }
        int colour = (int) chart.lines().subList(0, line).stream()
                .filter(before -> !before.quiet())
                .count();
        return style.series().get(colour);
    }

    // Drawing

    /** Draws it into an area, finding and note at the top. */
    public void draw(Graphics2D graphics, Rectangle2D area) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        View view = view();
        plotted.style(style);
        plotted.range(view.from(), view.to(), view.low(), view.high());
        g.setColor(style.sheet());
        g.fill(area);
        Lettered lettered = new Lettered(chart, style);
        Rectangle2D rest = Lettered.heading(g, style, chart.finding(), chart.note(), area);
        values = plotted.draw(g, rest, lettered.namesWidth(g), lettered.marksHeight(g));
        lettered.names(g, values, view);
        lettered.marks(g, values, view);
        g.dispose();
    }

    /**
     * The chart as a picture with a margin.
     *
     * @param width in pixels of the design
     * @param height in pixels of the design
     * @param fine how many pixels of the picture for one of the design, 1 or more
     */
    public BufferedImage picture(int width, int height, int fine) {
        BufferedImage image = new BufferedImage(width * fine, height * fine, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(fine, fine);
        g.setColor(style.sheet());
        g.fillRect(0, 0, width, height);
        int margin = 16;
        Rectangle2D before = values;
        draw(g, new Rectangle2D.Double(margin, margin, width - 2.0 * margin, height - 2.0 * margin));
        values = before;
        g.dispose();
        return image;
    }

    /** Writes {@link #picture} in the PNG format. */
    public void writePng(OutputStream out, int width, int height, int fine) throws IOException {
        ImageIO.write(picture(width, height, fine), "png", out);
    }

    private View view() {
        return new View(stretch.from(), stretch.to(), whole.low(), whole.high());
    }

    private View whole() {
        double from = chart.first();
        double to = chart.last();
        double margin = (to - from) * 0.02;
        double pad = margin > 0 ? margin : 1;
        double high = chart.highest();
        if (chart.up() instanceof Axis.Figures figures && figures.fromZero()) {
            return new View(from - pad, to + pad, 0, high > 0 ? high * HEADROOM : 1);
        }
        double low = chart.lowest();
        double room = high > low ? (high - low) * (HEADROOM - 1) : Math.max(1, Math.abs(high) * (HEADROOM - 1));
        return new View(from - pad, to + pad, low - room, high + room);
    }
}
