package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;

/**
 * A bore or another hole in the joint face of a design. What lies between two bores is a bridge.
 *
 * @param outline in which face
 * @param kind what it is for
 * @param number cylinder of a bore, counted from 1; null where holes are not told apart
 * @param x its centre from the front end
 * @param y its centre from the inlet edge
 * @param diameter above 0
 */
public record FaceHole(
        Id<FaceOutline> outline, HoleKind kind, @Nullable Integer number, Length x, Length y, Length diameter)
        implements Fact {
    public FaceHole {
        if (diameter.nanometres() <= 0) {
            throw new IllegalArgumentException("a hole is above 0 in diameter");
        }
        if (kind == HoleKind.BORE && (number == null || number < 1)) {
            throw new IllegalArgumentException("a bore is a cylinder's");
        }
    }
}
