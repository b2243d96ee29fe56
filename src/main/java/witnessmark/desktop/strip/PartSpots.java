package witnessmark.desktop.strip;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.HowMarked;
import witnessmark.domain.PartSpot;

/**
 * What is shown on the drawing of a part.
 *
 * @param inHand where the mark in hand is, or null where nobody said
 * @param spots every mark whose place is known, the one in hand last
 * @param said what the drawing shows, in sentences; empty for nothing
 */
record PartSpots(@Nullable PartSpot inHand, List<Spot> spots, String said) {
    static final PartSpots NONE = new PartSpots(null, List.of(), "");

    PartSpots {
        spots = List.copyOf(spots);
    }

    /** Which mark a spot is of. */
    enum Whose {
        /** The same line at another position. */
        OTHER,
        /** The same position when somebody looked last. */
        BEFORE,
        /** The same position now. */
        NOW,
        IN_HAND
    }

    /**
     * A mark.
     *
     * @param how how far it has gone, or null where nobody judged
     * @param number of its position, as written beside it; empty for none
     */
    record Spot(PartSpot place, Whose whose, @Nullable HowMarked how, String number) {}
}
