package witnessmark.chart;

import java.util.List;

/**
 * One bar lying on its side, put together of pieces told apart by how they are filled, so that it prints in one ink.
 *
 * @param pieces from the left
 */
public record StackedBar(List<Piece> pieces) {
    public StackedBar {
        pieces = List.copyOf(pieces);
    }

    /** How a piece is filled. */
    public enum Fill {
        SOLID,
        HATCHED,
        DOTTED,
        OUTLINED
    }

    /**
     * A piece of the bar.
     *
     * @param fill how it is filled
     * @param share of the whole scale, from 0 to 1; the scale ends at the longest bar of those beside each other
     */
    public record Piece(Fill fill, double share) {
        public Piece {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("a piece is a share of the scale: " + share);
            }
        }
    }

    /** How much of the scale all pieces take together. */
    public double length() {
        return pieces.stream().mapToDouble(Piece::share).sum();
    }
}
