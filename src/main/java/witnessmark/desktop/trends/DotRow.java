package witnessmark.desktop.trends;

import java.util.List;

/**
 * The last few readings of one place on a scale that all places of their kind share.
 *
 * @param dots where they lie, oldest first, 0 at the left end of the scale and 1 at the right
 * @param limits where figures of limits lie on it
 */
record DotRow(List<Double> dots, List<Double> limits) {
    /** So many are shown, the older the fainter. */
    static final int MOST = 5;

    DotRow {
        dots = List.copyOf(dots);
        limits = List.copyOf(limits);
    }
}
