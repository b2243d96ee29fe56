package witnessmark.fit.face;

import java.util.List;
import witnessmark.fit.result.face.Flat;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.mechanics.Flatness;
import witnessmark.mechanics.SurfacePoint;
import witnessmark.quantity.Length;

/** How flat a face is by a grid of readings (ISO 12781-1); never finer than what it was measured with. */
public final class Flatnesses {
    private static final int FEWEST = 4;
    private static final double MILLIMETRE = 1_000_000;

    private Flatnesses() {}

    public static Flat of(List<LowPoint> points, Length finest) {
        List<SurfacePoint> surface = points.stream()
                .map(point -> new SurfacePoint(
                        point.x().nanometres() / MILLIMETRE,
                        point.y().nanometres() / MILLIMETRE,
                        -point.depth().nanometres() / MILLIMETRE))
                .toList();
        if (surface.size() < FEWEST || onOneLine(surface)) {
            return new Flat(points.size(), null, null, finest);
        }
        return new Flat(
                points.size(),
                length(Flatness.leastSquares(surface).peakToValley()),
                length(Flatness.minimumZone(surface)),
                finest);
    }

    private static boolean onOneLine(List<SurfacePoint> points) {
        SurfacePoint from = points.get(0);
        SurfacePoint to = points.stream()
                .filter(point -> point.x() != from.x() || point.y() != from.y())
                .findFirst()
                .orElse(from);
        return points.stream()
                .allMatch(point -> Math.abs((to.x() - from.x()) * (point.y() - from.y())
                                - (to.y() - from.y()) * (point.x() - from.x()))
                        < 1e-9);
    }

    private static Length length(double millimetres) {
        return new Length(Math.round(millimetres * MILLIMETRE));
    }
}
