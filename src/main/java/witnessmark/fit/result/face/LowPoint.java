package witnessmark.fit.result.face;

import witnessmark.quantity.Length;

/**
 * A place of a face that was measured.
 *
 * @param x from the front end
 * @param y from the inlet edge
 * @param depth below the plane; below 0 where it stands proud
 * @param place where that is
 */
public record LowPoint(Length x, Length y, Length depth, FacePlace place) {
    /** How far apart two lie, in nanometres. */
    public double from(LowPoint other) {
        return Math.hypot(x.nanometres() - other.x.nanometres(), y.nanometres() - other.y.nanometres());
    }
}
