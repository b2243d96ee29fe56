package witnessmark.desktop.faces;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.fit.result.face.LowPoint;

/**
 * A face filled in between its readings, in a few levels: each little square takes the readings around it, the nearer the
 * more (weights fall with the square of the distance: D. Shepard, A two-dimensional interpolation function for
 * irregularly-spaced data, 1968). It is a picture to see by; only the readings were measured.
 *
 * @param columns squares along the face, from the front end
 * @param rows squares across it, from the inlet edge
 * @param levels 0 where a plate touches, up to {@link #LEVELS} − 1 where it is low; row by row
 */
record Shading(int columns, int rows, byte[] levels) {
    static final int LEVELS = 5;

    /** Low by this or more is the last level, in nanometres. */
    static final long BARE = 50_000;

    private static final int FEWEST = 3;
    private static final double SQUARE = 3e6;

    /** Null with too few readings to fill anything in. */
    static @Nullable Shading of(List<LowPoint> points, long length, long width) {
        if (points.size() < FEWEST) {
            return null;
        }
        int columns = (int) Math.max(1, Math.round(length / SQUARE));
        int rows = (int) Math.max(1, Math.round(width / SQUARE));
        byte[] levels = new byte[columns * rows];
        double[] x =
                points.stream().mapToDouble(point -> point.x().nanometres()).toArray();
        double[] y =
                points.stream().mapToDouble(point -> point.y().nanometres()).toArray();
        double[] z =
                points.stream().mapToDouble(point -> point.depth().nanometres()).toArray();
        for (int row = 0; row < rows; row++) {
            double atY = (row + 0.5) * width / rows;
            for (int column = 0; column < columns; column++) {
                levels[row * columns + column] = level(x, y, z, (column + 0.5) * length / columns, atY);
            }
        }
        return new Shading(columns, rows, levels);
    }

    private static byte level(double[] x, double[] y, double[] z, double atX, double atY) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < x.length; i++) {
            double dx = (x[i] - atX) / SQUARE;
            double dy = (y[i] - atY) / SQUARE;
            double away = dx * dx + dy * dy + 1;
            double weight = 1 / (away * away);
            sum += weight * z[i];
            weights += weight;
        }
        double share = sum / weights / BARE * LEVELS;
        return (byte) Math.max(0, Math.min(LEVELS - 1, Math.floor(share)));
    }

    int level(int column, int row) {
        return levels[row * columns + column];
    }
}
