package witnessmark.fit.result.face;

/**
 * Where on a face something lies, as the trade says it: {@code between 2 and 3, exhaust side}.
 *
 * @param kind at a cylinder or between two
 * @param number the cylinder, or the lower of the two; 0 where the face has no bores
 * @param side towards which edge
 */
public record FacePlace(Kind kind, int number, Side side) {
    /** At what. */
    public enum Kind {
        CYLINDER,
        BETWEEN,
        /** Of a face whose bores nobody wrote down. */
        FACE
    }

    /** Towards which edge. */
    public enum Side {
        INLET,
        MIDDLE,
        EXHAUST
    }
}
