package witnessmark.fit.result.face;

import java.util.List;

/**
 * A low zone of a face at one look.
 *
 * @param deepest its deepest place, by which it is named
 * @param points its places, the deepest first
 */
public record LowZone(LowPoint deepest, List<LowPoint> points) {
    public LowZone {
        points = List.copyOf(points);
    }

    public FacePlace place() {
        return deepest.place();
    }
}
