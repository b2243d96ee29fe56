package witnessmark.mechanics;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;

/**
 * How flat a nearly level face is: the distance between two parallel planes that hold all its points (ISO 12781-1,
 * ISO 1101). Deviations are taken along z.
 */
public final class Flatness {
    /** As many as a single plane always passes through. */
    private static final int FEWEST = 4;

    private static final double LEVEL = 1e-12;

    private Flatness() {}

    /**
     * The plane {@code z = a + b·x + c·y} of least squares, and the flatness about it.
     *
     * @param a height at the origin
     * @param b rise along x
     * @param c rise along y
     * @param peakToValley between planes parallel to it
     * @param rms root of the mean square of the deviations, over n − 3
     */
    public record LeastSquares(double a, double b, double c, double peakToValley, double rms) {}

    /**
     * @throws IllegalArgumentException if there are fewer than four points, or all lie on a line
     */
    public static LeastSquares leastSquares(List<SurfacePoint> points) {
        enough(points);
        double[][] rows = new double[points.size()][];
        double[] heights = new double[points.size()];
        for (int i = 0; i < points.size(); i++) {
            SurfacePoint p = points.get(i);
            rows[i] = new double[] {1, p.x(), p.y()};
            heights[i] = p.z();
        }
        QRDecomposition decomposition = new QRDecomposition(new Array2DRowRealMatrix(rows, false), LEVEL);
        if (!decomposition.getSolver().isNonSingular()) {
            throw new IllegalArgumentException("points on one line say nothing of a face");
        }
        RealVector plane = decomposition.getSolver().solve(new ArrayRealVector(heights, false));
        double a = plane.getEntry(0);
        double b = plane.getEntry(1);
        double c = plane.getEntry(2);
        double squares = 0;
        for (SurfacePoint p : points) {
            double off = p.z() - a - b * p.x() - c * p.y();
            squares += off * off;
        }
        return new LeastSquares(
                a, b, c, range(points, b, c, Double.POSITIVE_INFINITY), Math.sqrt(squares / (points.size() - 3)));
    }

    /**
     * The least distance of two parallel planes that hold all points. Such planes touch the points either in three on
     * one side and one on the other, or in two and two; every set of either kind is tried.
     *
     * @throws IllegalArgumentException if there are fewer than four points, or all lie on a line
     */
    public static double minimumZone(List<SurfacePoint> points) {
        enough(points);
        double least = Double.POSITIVE_INFINITY;
        int n = points.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                for (int k = 0; k < n; k++) {
                    for (int l = k + 1; l < n; l++) {
                        if (k != i && l != j) {
                            least = Math.min(least, along(points, i, j, k, l, least));
                        }
                    }
                }
            }
        }
        if (Double.isInfinite(least)) { // no two lines cross
            throw new IllegalArgumentException("points on one line say nothing of a face");
        }
        return least;
    }

    /**
     * The distance of planes parallel to two lines through points, which may share one; infinite when those are parallel, or
     * when it is no less than what was found before.
     */
    private static double along(List<SurfacePoint> points, int i, int j, int k, int l, double least) {
        SurfacePoint p = points.get(i);
        SurfacePoint q = points.get(j);
        SurfacePoint r = points.get(k);
        SurfacePoint s = points.get(l);
        double ux = q.x() - p.x();
        double uy = q.y() - p.y();
        double uz = q.z() - p.z();
        double vx = s.x() - r.x();
        double vy = s.y() - r.y();
        double vz = s.z() - r.z();
        double cross = ux * vy - uy * vx;
        if (Math.abs(cross) < LEVEL) {
            return Double.POSITIVE_INFINITY;
        }
        double b = (uz * vy - vz * uy) / cross;
        double c = (ux * vz - vx * uz) / cross;
        return range(points, b, c, least);
    }

    /** How far the points lie apart along z over a plane of that slope; infinite once that is no less than a bound. */
    private static double range(List<SurfacePoint> points, double b, double c, double bound) {
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (SurfacePoint p : points) {
            double off = p.z() - b * p.x() - c * p.y();
            high = Math.max(high, off);
            low = Math.min(low, off);
            if (high - low >= bound) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return high - low;
    }

    private static void enough(List<SurfacePoint> points) {
        if (points.size() < FEWEST) {
            throw new IllegalArgumentException("a face is judged by four points or more, not " + points.size());
        }
    }
}
