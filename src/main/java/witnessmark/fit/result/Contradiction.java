package witnessmark.fit.result;

import java.util.List;
import witnessmark.domain.MeasurePlace;

/**
 * Figures that cannot all be right.
 *
 * @param what how they contradict each other
 * @param places whose figures
 */
public record Contradiction(What what, List<MeasurePlace> places) {
    /** What cannot be. */
    public enum What {
        ROD_NOT_LONGER_THAN_CRANK,
        CLAMPED_THICKER_THAN_FREE,
        CLAMPED_BORE_WIDER_THAN_FREE,
        PISTON_NOT_SMALLER_THAN_BORE,
        JOURNAL_NOT_SMALLER_THAN_BORE,
        BOLT_SHORTER_THAN_BEFORE
    }

    public Contradiction {
        places = List.copyOf(places);
    }
}
