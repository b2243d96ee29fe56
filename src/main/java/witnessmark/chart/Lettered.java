package witnessmark.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes on a chart what the library would write elsewhere or on top of itself: finding, names, marks' labels. */
final class Lettered {
    private static final double LINE_APART = 16;

    private final Chart chart;
    private final ChartStyle style;

    Lettered(Chart chart, ChartStyle style) {
        this.chart = chart;
        this.style = style;
    }

    /** Writes finding and note at the top of an area and returns what is left of it. */
    static Rectangle2D heading(Graphics2D g, ChartStyle style, String finding, String note, Rectangle2D area) {
        double gap = 4 * style.scale();
        double top = area.getY();
        g.setColor(style.ink());
        for (String row : wrapped(finding, g.getFontMetrics(style.title()), area.getWidth())) {
            top = write(g, style.title(), row, area.getX(), top);
        }
        g.setColor(style.ink2());
        for (String row : wrapped(note, g.getFontMetrics(style.text()), area.getWidth())) {
            top = write(g, style.text(), row, area.getX(), top);
        }
        top += 2 * gap;
        return new Rectangle2D.Double(area.getX(), top, area.getWidth(), Math.max(1, area.getMaxY() - top));
    }

    /** The room the names at the right ends of the lines need. */
    double namesWidth(Graphics2D g) {
        FontMetrics metrics = g.getFontMetrics(style.text());
        double widest = chart.lines().stream()
                .mapToDouble(line -> metrics.stringWidth(line.name()))
                .max()
                .orElse(0);
        return widest + 12 * style.scale();
    }

    /** The room above the values that labels of uprights and bands need, or else the upper half of a figure beside the topmost line. */
    double marksHeight(Graphics2D g) {
        double line = g.getFontMetrics(style.text()).getHeight();
        return chart.uprights().isEmpty() && chart.bands().isEmpty() ? line / 2 : line + 2 * style.scale();
    }

    /** Writes each line's name where the line leaves the values at the right. */
    void names(Graphics2D g, Rectangle2D values, View view) {
        record End(Line line, double at, Color ink) {}
        List<End> ends = new ArrayList<>();
        int colour = 0;
        for (Line line : chart.lines()) {
            Color ink = line.quiet() ? style.ink2() : style.series().get(colour);
            colour += line.quiet() ? 0 : 1;
            double height = view.endOf(line);
            if (!Double.isNaN(height) && !line.name().isEmpty()) {
                ends.add(new End(line, view.y(height, values), ink));
            }
        }
        ends.sort(Comparator.comparingDouble(End::at));
        double[] wanted = ends.stream().mapToDouble(End::at).toArray();
        double[] at = LineEnds.spread(wanted, LINE_APART * style.scale(), values.getY(), values.getMaxY());
        FontMetrics metrics = g.getFontMetrics(style.text());
        g.setFont(style.text());
        for (int i = 0; i < ends.size(); i++) {
            End end = ends.get(i);
            g.setColor(end.ink());
            double baseline = at[i] + (metrics.getAscent() - metrics.getDescent()) / 2.0;
            g.drawString(end.line().name(), (float) (values.getMaxX() + 8 * style.scale()), (float) baseline);
        }
    }

    /** Writes the labels of uprights and bands above the values, each where there is room for it. */
    void marks(Graphics2D g, Rectangle2D values, View view) {
        record Label(double from, double to, String words, Color ink) {}
        FontMetrics metrics = g.getFontMetrics(style.text());
        List<Label> taken = new ArrayList<>();
        List<Label> wanted = new ArrayList<>();
        for (Chart.Mark upright : chart.uprights()) {
            double at = view.x(upright.at(), values);
            wanted.add(new Label(at, at + metrics.stringWidth(upright.label()), upright.label(), style.ink()));
        }
        for (Chart.Band band : chart.bands()) {
            double middle = (view.x(band.from(), values) + view.x(band.to(), values)) / 2;
            double half = metrics.stringWidth(band.label()) / 2.0;
            wanted.add(new Label(middle - half, middle + half, band.label(), style.ink2()));
        }
        g.setFont(style.text());
        double gap = 8 * style.scale();
        for (Label label : wanted) {
            boolean room = label.from() >= values.getX() - gap
                    && label.to() <= values.getMaxX() + gap
                    && taken.stream().noneMatch(t -> label.from() < t.to() + gap && t.from() < label.to() + gap);
            if (room) {
                taken.add(label);
                g.setColor(label.ink());
                g.drawString(label.words(), (float) label.from(), (float)
                        (values.getY() - 3 * style.scale() - metrics.getDescent()));
            }
        }
        LevelLabels.draw(g, style, chart.levels(), level -> view.y(level, values), values);
    }

    /** Clears the ground for words that stand on curves. */
    static void clear(Graphics2D g, ChartStyle style, Rectangle2D words) {
        Color sheet = style.sheet();
        g.setColor(new Color(sheet.getRed(), sheet.getGreen(), sheet.getBlue(), 200));
        g.fill(new Rectangle2D.Double(
                words.getX() - 2 * style.scale(),
                words.getY(),
                words.getWidth() + 4 * style.scale(),
                words.getHeight()));
    }

    private static double write(Graphics2D g, Font font, String row, double x, double top) {
        FontMetrics metrics = g.getFontMetrics(font);
        g.setFont(font);
        g.drawString(row, (float) x, (float) (top + metrics.getAscent()));
        return top + metrics.getHeight();
    }

    /** The words in rows no wider than a width, where words allow. */
    static List<String> wrapped(String words, FontMetrics metrics, double width) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (String word : words.split(" ")) {
            String longer = row.length() == 0 ? word : row + " " + word;
            if (row.length() > 0 && metrics.stringWidth(longer) > width) {
                rows.add(row.toString());
                row.setLength(0);
                row.append(word);
            } else {
                row.setLength(0);
                row.append(longer);
            }
        }
        if (row.length() > 0) {
            rows.add(row.toString());
        }
        return rows;
    }
}
