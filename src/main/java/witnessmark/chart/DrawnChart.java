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

    /** Under the lowest point where the axis does not start at 0, so that its mark is whole. */
    private static final double FOOTROOM = 0.06;

    private final Chart chart;
    private final Plotted plotted;
    private ChartStyle style;
    private View view;
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
        this.view = whole();
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
        view = whole();
    }

    /**
     * Looks closer or from further away.
     *
     * @param factor less than 1 for closer
     * @param about the place across that stays where it is
     */
    public void zoom(double factor, double about) {
        View all = whole();
        double wide = Math.min(all.to() - all.from(), (view.to() - view.from()) * factor);
        wide = Math.max(wide, (all.to() - all.from()) * CLOSEST);
        double share = (about - view.from()) / (view.to() - view.from());
        look(about - share * wide, wide);
    }

    /** Moves what is seen by a share of its width, to the right when more than 0. */
    public void pan(double share) {
        double wide = view.to() - view.from();
        look(view.from() + share * wide, wide);
    }

    /** Moves what is seen just so far that a place across is in it. */
    public void bringIntoView(double across) {
        double wide = view.to() - view.from();
        if (across < view.from()) {
            look(across - 0.05 * wide, wide);
        } else if (across > view.to()) {
            look(across - 0.95 * wide, wide);
        }
    }

    /** The least place across that is seen. */
    public double from() {
        return view.from();
    }

    /** The greatest place across that is seen. */
    public double to() {
        return view.to();
    }

    /** The place across under a point of the last drawing. */
    public double across(double x) {
        return view.across(x, values);
    }

    // Pointing at it

    /** Where a point of a line stood in the last drawing. */
    public Point2D at(Place place) {
        Dot dot = chart.lines().get(place.line()).dots().get(place.dot());
        return new Point2D.Double(view.x(dot.across(), values), view.y(dot.height(), values));
    }

    /** Where the values stood in the last drawing. */
    public Rectangle2D values() {
        return (Rectangle2D) values.clone();
    }

    /** The point of a line nearest to a point of the last drawing, if one lies within a distance. */
    public Optional<Place> nearest(double x, double y, double within) {
        Place best = null;
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
        plotted.style(style);
        plotted.range(view.from(), view.to(), view.low(), view.high());
        g.setColor(style.sheet());
        g.fill(area);
        Lettered lettered = new Lettered(chart, style);
        Rectangle2D rest = lettered.heading(g, area);
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

    private void look(double from, double wide) {
        View all = whole();
        double least = Math.max(all.from(), Math.min(from, all.to() - wide));
        view = new View(least, least + wide, all.low(), all.high());
    }

    private View whole() {
        double from = chart.first();
        double to = chart.last();
        double margin = (to - from) * 0.02;
        double pad = margin > 0 ? margin : 1;
        double high = chart.highest();
        return new View(from - pad, to + pad, low(), high > 0 ? high * HEADROOM : 1);
    }

    private double low() {
        if (chart.up() instanceof Axis.Figures figures && figures.fromZero()) {
            return 0;
        }
        double least = chart.lines().stream()
                .flatMap(line -> line.dots().stream())
                .filter(dot -> dot.up() != null)
                .mapToDouble(Dot::height)
                .min()
                .orElse(0);
        return least - (chart.highest() - least) * FOOTROOM;
    }
}
