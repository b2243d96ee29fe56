package witnessmark.logbook.faces;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.mechanics.Flatness;
import witnessmark.mechanics.SurfacePoint;

/**
 * How flat a grid of readings is, from lines of text with no logbook. Each line is three figures, x, y and z, apart by a
 * comma, a semicolon, a tab or spaces; a heading such as {@code x_mm,y_mm,z_um} says the unit of z, which is millimetres
 * where no heading does. What stands behind a {@code #} is a remark.
 */
public final class GridText {
    /** More than any plate is read at; minimum zones are searched over pairs of pairs. */
    public static final int MOST = 200;

    private static final Map<String, BigDecimal> UNITS = Map.of(
            "mm", BigDecimal.ONE,
            "um", new BigDecimal("0.001"),
            "µm", new BigDecimal("0.001"),
            "thou", new BigDecimal("0.0254"),
            "in", new BigDecimal("25.4"));

    private GridText() {}

    /**
     * A line that was not understood.
     *
     * @param line as an editor counts it
     * @param text the line
     */
    public record Unread(int line, String text) {}

    /**
     * What the lines come to; millimetres throughout.
     *
     * @param points how many readings
     * @param flat how flat they are, or null with too few readings, too many, or all on one line
     * @param unread lines that were not understood; nothing of them counts
     */
    public record Read(int points, @Nullable Flatnesses flat, List<Unread> unread) {}

    /**
     * How flat a grid is by both measures; millimetres.
     *
     * @param a height of the plane of least squares at the origin
     * @param b its rise along x
     * @param c its rise along y
     * @param peakToValley between planes parallel to it that hold all readings
     * @param rms root of the mean square of what readings lie off it, over n − 3
     * @param minimumZone between the nearest two parallel planes that hold all readings
     */
    public record Flatnesses(double a, double b, double c, double peakToValley, double rms, double minimumZone) {}

    public static Read of(List<String> lines) {
        List<SurfacePoint> points = new ArrayList<>();
        List<Unread> unread = new ArrayList<>();
        BigDecimal unit = BigDecimal.ONE;
        boolean begun = false;
        for (int i = 0; i < lines.size(); i++) {
            String text =
                    lines.get(i).replaceFirst("#.*", "").replace("\uFEFF", "").strip();
            if (text.isEmpty()) {
                continue;
            }
            String[] cells = text.split("[,;\\t]\\s*|\\s+");
            BigDecimal headed = begun || cells.length != 3 ? null : heading(cells);
            begun = true;
            SurfacePoint point = headed == null ? point(cells, unit) : null;
            if (headed != null) {
                unit = headed;
            } else if (point != null) {
                points.add(point);
            } else {
                unread.add(new Unread(i + 1, text));
            }
        }
        if (points.size() > MOST) {
            return new Read(points.size(), null, unread);
        }
        try {
            Flatness.LeastSquares plane = Flatness.leastSquares(points);
            return new Read(
                    points.size(),
                    new Flatnesses(
                            plane.a(),
                            plane.b(),
                            plane.c(),
                            plane.peakToValley(),
                            plane.rms(),
                            Flatness.minimumZone(points)),
                    unread);
        } catch (IllegalArgumentException e) { // too few, or on one line
            return new Read(points.size(), null, unread);
        }
    }

    /** The unit of z that a heading names; null when it is no heading. */
    private static @Nullable BigDecimal heading(String[] cells) {
        String x = cells[0].toLowerCase(Locale.ROOT);
        String z = cells[2].toLowerCase(Locale.ROOT);
        return x.startsWith("x") && z.startsWith("z")
                ? UNITS.getOrDefault(z.replaceFirst("^z[ _(]*", "").replace(")", ""), BigDecimal.ONE)
                : null;
    }

    private static @Nullable SurfacePoint point(String[] cells, BigDecimal unit) {
        if (cells.length != 3) {
            return null;
        }
        try {
            return new SurfacePoint(
                    Double.parseDouble(cells[0]),
                    Double.parseDouble(cells[1]),
                    new BigDecimal(cells[2]).multiply(unit).doubleValue());
        } catch (NumberFormatException e) {
            return null;
        }
    }
}
