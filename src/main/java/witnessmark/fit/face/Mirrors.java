package witnessmark.fit.face;

import java.util.List;
import java.util.Optional;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.LowZone;

/** Finds what may have been written down the wrong way up: counted from the exhaust edge in place of the inlet edge. */
public final class Mirrors {
    private Mirrors() {}

    /**
     * A zone seen before that the new readings would meet only if they were turned over.
     *
     * @param before zones of earlier looks at what lies on the same face
     * @param measured the new readings
     */
    public static Optional<LowZone> suspected(Face face, List<LowZone> before, List<LowPoint> measured) {
        List<LowZone> now = Zones.of(face, measured);
        List<LowZone> turned = Zones.of(
                face,
                measured.stream()
                        .map(point -> face.point(point.x(), face.mirrored(point.y()), point.depth()))
                        .toList());
        return meets(face, before, now).isPresent() ? Optional.empty() : meets(face, before, turned);
    }

    private static Optional<LowZone> meets(Face face, List<LowZone> before, List<LowZone> now) {
        return before.stream()
                .filter(zone -> now.stream().anyMatch(each -> Zones.same(face, zone, each)))
                .findFirst();
    }
}
