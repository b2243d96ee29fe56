package witnessmark.desktop.cases;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import witnessmark.desktop.form.Cut;
import witnessmark.desktop.form.Palette;
import witnessmark.study.result.WayTo.Kind;
import witnessmark.wording.WayLines;

/** Paints a way in one band: what was seen above the line, what was changed below it, the failure at the right. */
final class WayPainter {
    /** So many rows of words at most on a side of the line; what is longer is cut, and whole in the line below it. */
    private static final int MOST = 9;

    private static final int NARROWEST = 62;

    private final List<WayLines.Point> points;
    private final Font strong;
    private final Font small;
    private final FontMetrics metrics;
    private final FontMetrics strongMetrics;
    private final double width;
    private final int above;
    private final int below;

    /** @param measure what the words of a font take where it is painted */
    WayPainter(List<WayLines.Point> all, Font strong, Font small, Function<Font, FontMetrics> measure, double width) {
        int room = Math.max(1, (int) (width / UIScale.scale(NARROWEST)));
        this.points = all.subList(Math.max(0, all.size() - room), all.size());
        this.strong = strong;
        this.small = small;
        this.metrics = measure.apply(small);
        this.strongMetrics = measure.apply(strong);
        this.width = width;
        this.above = points.stream().mapToInt(point -> seen(point).size()).max().orElse(1);
        this.below =
                points.stream().mapToInt(point -> changed(point).size()).max().orElse(1);
    }

    /** What its words take at this width. */
    double height() {
        return (above + below + 2) * metrics.getHeight() + UIScale.scale(34);
    }

    private List<String> seen(WayLines.Point point) {
        return EvidenceGrid.wrapped(point.seen(), isBad(point) ? strongMetrics : metrics, room(), MOST);
    }

    /** What went wrong is said in the stronger font, which takes more room. */
    private static boolean isBad(WayLines.Point point) {
        return point.kinds().stream().anyMatch(kind -> kind.compareTo(Kind.SYMPTOM) >= 0);
    }

    private List<String> changed(WayLines.Point point) {
        return EvidenceGrid.wrapped(point.changed(), metrics, room(), MOST);
    }

    private double room() {
        return step() - UIScale.scale(6);
    }

    /** How many at the left have no room; they are in the table. */
    int leftOut(int of) {
        return of - points.size();
    }

    private double step() {
        return width / points.size();
    }

    private double middle(int at) {
        return step() * (at + 0.5);
    }

    private double line() {
        return above * metrics.getHeight() + UIScale.scale(12);
    }

    /** The point at a place, counted from the first that has room. */
    int at(double x) {
        return Math.max(0, Math.min(points.size() - 1, (int) (x / step())));
    }

    /** @param hand the point in hand, counted from the first that has room; −1 for none */
    void paint(Graphics2D g, int hand, boolean focused) {
        if (hand >= 0 && hand < points.size()) {
            g.setColor(Palette.TRACK.mixedWith(Palette.SHEET, 0.5));
            Rectangle2D box = new Rectangle2D.Double(step() * hand, 0, step(), height());
            g.fill(box);
            if (focused) {
                float ring = UIScale.scale(2f);
                g.setColor(Palette.MARK.colour());
                g.setStroke(new BasicStroke(ring));
                g.draw(new Rectangle2D.Double(
                        box.getX() + ring / 2, ring / 2, box.getWidth() - ring, box.getHeight() - ring));
            }
        }
        g.setColor(Palette.INK2.colour());
        g.setStroke(new BasicStroke(UIScale.scale(2f)));
        g.draw(new Line2D.Double(0, line(), middle(points.size() - 1), line()));
        for (int i = 0; i < points.size(); i++) {
            point(g, points.get(i), middle(i));
        }
    }

    private void point(Graphics2D g, WayLines.Point point, double x) {
        double room = room();
        List<String> seen = seen(point);
        double y = line() - UIScale.scale(10) - seen.size() * metrics.getHeight();
        for (String row : seen) {
            y = centred(g, isBad(point) ? strong : small, row, x, y, Palette.INK);
        }
        shapes(g, point.kinds(), x);
        y = line() + UIScale.scale(10);
        for (String row : changed(point)) {
            y = centred(g, small, row, x, y, Palette.INK);
        }
        y = height() - 2 * metrics.getHeight() - UIScale.scale(4);
        y = centred(g, small, point.day(), x, y, Palette.INK2);
        centred(g, small, Cut.to(point.hours(), metrics, room), x, y, Palette.INK2);
    }

    /** What was changed, and the worst of what was seen. */
    private void shapes(Graphics2D g, List<Kind> kinds, double x) {
        double size = UIScale.scale(11);
        kinds.stream().filter(kind -> kind.compareTo(Kind.GOOD) < 0).forEach(kind -> shape(g, kind, x, line(), size));
        kinds.stream()
                .filter(kind -> kind.compareTo(Kind.GOOD) >= 0)
                .max(Comparator.naturalOrder())
                .ifPresent(kind -> shape(g, kind, x, line(), size));
    }

    private void shape(Graphics2D g, Kind kind, double x, double y, double size) {
        double half = size / 2;
        g.setStroke(new BasicStroke((float) (size / 6)));
        switch (kind) {
            case REBUILT -> {
                g.setColor(Palette.INK.colour());
                g.draw(new Line2D.Double(x - half / 2, y - half, x - half / 2, y + half));
                g.draw(new Line2D.Double(x + half / 2, y - half, x + half / 2, y + half));
            }
            case CHANGED -> {
                g.setColor(Palette.INK.colour());
                g.draw(new Line2D.Double(x, y, x, y + half * 1.5));
            }
            case GOOD -> {
                Ellipse2D ring = new Ellipse2D.Double(x - half, y - half, size, size);
                g.setColor(Palette.SHEET.colour());
                g.fill(ring);
                g.setColor(Palette.INK.colour());
                g.draw(ring);
            }
            case SYMPTOM -> {
                g.setColor(Palette.DUE.colour());
                g.fill(triangle(x, y, half));
            }
            case BROKE, FAILURE -> {
                g.setColor(Palette.SHEET.colour());
                g.fill(new Rectangle2D.Double(x - half, y - half, size, size));
                g.setColor(Palette.OVER.colour());
                g.setStroke(new BasicStroke((float) (size / (kind == Kind.FAILURE ? 3.5 : 6))));
                g.draw(new Line2D.Double(x - half, y - half, x + half, y + half));
                g.draw(new Line2D.Double(x - half, y + half, x + half, y - half));
            }
        }
    }

    private static Path2D triangle(double x, double y, double half) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - half * 1.1, y + half * 0.9);
        path.lineTo(x + half * 1.1, y + half * 0.9);
        path.lineTo(x, y - half);
        path.closePath();
        return path;
    }

    private double centred(Graphics2D g, Font font, String words, double x, double y, Palette ink) {
        FontMetrics used = g.getFontMetrics(font);
        g.setFont(font);
        g.setColor(ink.colour());
        g.drawString(words, (float) (x - used.stringWidth(words) / 2.0), (float) (y + used.getAscent()));
        return y + metrics.getHeight();
    }
}
