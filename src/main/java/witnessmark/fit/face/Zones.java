package witnessmark.fit.face;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.LowZone;

/**
 * Gathers low places into zones. A zone is named by its deepest place: what falls towards it from around is the same
 * zone, what is low by itself further off is another.
 */
public final class Zones {
    /** A healthy head is within this between rebuilds (common practice, no source). */
    public static final long HEALTHY = 20_000;

    /** Places further apart than this share of a bore pitch are not one low zone: no dip bridges a whole cylinder. */
    private static final double REACH = 1.25;

    private Zones() {}

    /** The low zones of what was measured at one look, the deepest first. */
    public static List<LowZone> of(Face face, List<LowPoint> measured) {
        double reach = REACH * face.pitch().orElse(face.outline().length().nanometres() / 4);
        List<List<LowPoint>> zones = new ArrayList<>();
        measured.stream()
                .filter(point -> point.depth().nanometres() > HEALTHY)
                .sorted(Comparator.comparing(LowPoint::depth).reversed())
                .forEach(point -> nearest(zones, point, reach)
                        .orElseGet(() -> begun(zones))
                        .add(point));
        return zones.stream().map(points -> new LowZone(points.get(0), points)).toList();
    }

    private static List<LowPoint> begun(List<List<LowPoint>> zones) {
        List<LowPoint> zone = new ArrayList<>();
        zones.add(zone);
        return zone;
    }

    /** The zone of the nearest deeper place within reach. */
    private static Optional<List<LowPoint>> nearest(List<List<LowPoint>> zones, LowPoint point, double reach) {
        return zones.stream()
                .filter(zone -> distance(zone, point) <= reach)
                .min(Comparator.comparingDouble(zone -> distance(zone, point)));
    }

    private static double distance(List<LowPoint> zone, LowPoint point) {
        return zone.stream().mapToDouble(point::from).min().orElseThrow();
    }

    /** Whether two zones of different looks are the same: named alike, or deepest within half a bore pitch. */
    public static boolean same(Face face, LowZone one, LowZone other) {
        double half = face.pitch().orElse(face.outline().length().nanometres() / 4) / 2.0;
        return one.place().equals(other.place()) || one.deepest().from(other.deepest()) <= half;
    }
}
