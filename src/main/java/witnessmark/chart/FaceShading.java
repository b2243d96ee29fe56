package witnessmark.chart;

import java.awt.geom.Path2D;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A face filled in between its readings, in a few levels: each little square takes the readings around it, the nearer the
 * more (weights fall with the square of the distance: D. Shepard, A two-dimensional interpolation function for
 * irregularly-spaced data, 1968). It is a picture to see by; only the readings were measured.
 *
 * @param columns squares along the face, from the front end
 * @param rows squares across it, from the inlet edge
 * @param levels 0 where a plate touches, up to {@link #LEVELS} − 1 where it is low; row by row
 */
public record FaceShading(int columns, int rows, byte[] levels) {
    public static final int LEVELS = 5;

    /** Low by this or more is the last level, in millimetres. */
    public static final double LOW = 0.05;

    private static final int FEWEST = 3;

    /** Side of a square, in millimetres. */
    private static final double SQUARE = 3;

    /** A reading: its place and how low it is, in millimetres. */
    public record Reading(double x, double y, double low) {}

    /** Null with too few readings to fill anything in. */
    public static @Nullable FaceShading of(List<Reading> readings, double length, double width) {
        if (readings.size() < FEWEST) {
            return null;
        }
        int columns = (int) Math.max(1, Math.round(length / SQUARE));
        int rows = (int) Math.max(1, Math.round(width / SQUARE));
        byte[] levels = new byte[columns * rows];
        double[] x = readings.stream().mapToDouble(Reading::x).toArray();
        double[] y = readings.stream().mapToDouble(Reading::y).toArray();
        double[] z = readings.stream().mapToDouble(Reading::low).toArray();
        for (int row = 0; row < rows; row++) {
            double atY = (row + 0.5) * width / rows;
            for (int column = 0; column < columns; column++) {
                levels[row * columns + column] = level(x, y, z, (column + 0.5) * length / columns, atY);
            }
        }
        return new FaceShading(columns, rows, levels);
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
        double share = sum / weights / LOW * LEVELS;
        return (byte) Math.max(0, Math.min(LEVELS - 1, Math.floor(share)));
    }

    int level(int column, int row) {
        return levels[row * columns + column];
    }

    /** Whether a square is of the last level; none is beyond the edges. */
    boolean isLow(int column, int row) {
        return column >= 0 && row >= 0 && column < columns && row < rows && level(column, row) == LEVELS - 1;
    }

    /** The squares of this level and lower ones of the face. */
    Path2D from(int least, FacePlane plane) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (int row = 0; row < rows; row++) {
            int from = -1;
            for (int column = 0; column <= columns; column++) {
                boolean within = column < columns && level(column, row) >= least;
                if (within && from < 0) {
                    from = column;
                } else if (!within && from >= 0) {
                    path.moveTo(x(plane, from), y(plane, row));
                    path.lineTo(x(plane, column), y(plane, row));
                    path.lineTo(x(plane, column), y(plane, row + 1));
                    path.lineTo(x(plane, from), y(plane, row + 1));
                    path.closePath();
                    from = -1;
                }
            }
        }
        return path;
    }

    /** Lines across the squares of the last level, falling to the right, so far apart along the drawing. */
    Path2D hatch(FacePlane plane, double step) {
        Path2D path = new Path2D.Double();
        for (int row = 0; row < rows; row++) {
            double top = Math.min(y(plane, row), y(plane, row + 1));
            double bottom = Math.max(y(plane, row), y(plane, row + 1));
            int from = -1;
            for (int column = 0; column <= columns; column++) {
                boolean low = isLow(column, row);
                if (low && from < 0) {
                    from = column;
                } else if (!low && from >= 0) {
                    double left = Math.min(x(plane, from), x(plane, column));
                    double right = Math.max(x(plane, from), x(plane, column));
                    strokes(path, left, right, top, bottom, step);
                    from = -1;
                }
            }
        }
        return path;
    }

    /** The pieces within a box of lines on which x less y is a multiple of the step. */
    static void strokes(Path2D path, double left, double right, double top, double bottom, double step) {
        for (double off = Math.ceil((left - bottom) / step) * step; off < right - top; off += step) {
            double from = Math.max(top, left - off);
            double to = Math.min(bottom, right - off);
            if (from < to) {
                path.moveTo(off + from, from);
                path.lineTo(off + to, to);
            }
        }
    }

    /** Where squares of the last level meet others. */
    Path2D aroundLow(FacePlane plane) {
        Path2D path = new Path2D.Double();
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= columns; column++) {
                if (column < columns && isLow(column, row) != isLow(column, row - 1)) {
                    path.moveTo(x(plane, column), y(plane, row));
                    path.lineTo(x(plane, column + 1), y(plane, row));
                }
                if (row < rows && isLow(column, row) != isLow(column - 1, row)) {
                    path.moveTo(x(plane, column), y(plane, row));
                    path.lineTo(x(plane, column), y(plane, row + 1));
                }
            }
        }
        return path;
    }

    private double x(FacePlane plane, int column) {
        return plane.x(column * plane.length() / columns);
    }

    private double y(FacePlane plane, int row) {
        return plane.y(row * plane.width() / rows);
    }
}
