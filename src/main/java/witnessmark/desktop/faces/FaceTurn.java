package witnessmark.desktop.faces;

import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceOutline;
import witnessmark.domain.FrontSide;

/**
 * How a face lies before the one who looks. As it lies by itself it is seen from the face with its front end to the left:
 * of two faces that meet, one then is the mirror of the other.
 *
 * @param mirrored seen as the face it meets is seen, so that it lies over it
 * @param endForEnd turned by half a turn, its front end to the right
 */
public record FaceTurn(boolean mirrored, boolean endForEnd) {
    /** Straight on. */
    public static final FaceTurn AS_IT_LIES = new FaceTurn(false, false);

    /**
     * Whether the exhaust edge is the lower one. From below, as a head's face is seen, with the front end to the left the
     * left side of the engine, seen from its front, lies below; from above, as a block is seen, it lies above.
     */
    public boolean exhaustBelow(FaceOutline outline, FaceKind kind) {
        boolean fromBelow = kind == FaceKind.HEAD || kind == FaceKind.GASKET_TO_BLOCK;
        boolean below = (outline.exhaust() == FrontSide.LEFT) == fromBelow;
        return below != mirrored != endForEnd;
    }

    /** Whether the front end lies to the left. */
    public boolean frontLeft() {
        return !endForEnd;
    }

    FaceTurn mirror() {
        return new FaceTurn(!mirrored, endForEnd);
    }

    FaceTurn turn() {
        return new FaceTurn(mirrored, !endForEnd);
    }
}
