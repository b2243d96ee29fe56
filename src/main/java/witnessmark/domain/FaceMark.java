package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;

/**
 * A low area, a shadow or another mark on a face: a point, an ellipse along the edges, or an outline.
 *
 * @param look of which look
 * @param kind what it is
 * @param x its middle from the front end
 * @param y its middle from the inlet edge
 * @param along how long it is along the face, above 0; null for a point or an outline
 * @param across how wide it is across the face, above 0; null for a point or an outline
 * @param outline corners in millimetres, as in {@code 180 120, 230 120, 205 160}, three or more; empty for none
 * @param depth how far below the plane it reaches, below 0 where it stands proud; null when not measured
 * @param words what was seen
 */
public record FaceMark(
        Id<FaceLook> look,
        FaceMarkKind kind,
        Length x,
        Length y,
        @Nullable Length along,
        @Nullable Length across,
        String outline,
        @Nullable Length depth,
        String words)
        implements Fact {
    public FaceMark {
        if ((along == null) != (across == null)) {
            throw new IllegalArgumentException("an area has both its lengths or neither");
        }
        if (along != null && along.nanometres() <= 0 || across != null && across.nanometres() <= 0) {
            throw new IllegalArgumentException("an area is above 0 in both its lengths");
        }
        if (along != null && !outline.isEmpty()) {
            throw new IllegalArgumentException("an area is an ellipse or has corners, not both");
        }
        Corners.read(outline);
    }

    /** Its corners; none for a point or an ellipse. */
    public Corners corners() {
        return Corners.read(outline);
    }
}
