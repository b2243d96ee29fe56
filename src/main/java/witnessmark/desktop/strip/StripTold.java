package witnessmark.desktop.strip;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.Id;
import witnessmark.domain.PartSpot;

/** What the fields beside the table of a strip ask for. */
interface StripTold {
    /**
     * @param of the finding it is the mark of, or null for the last there or the first
     * @param on where on its part, or null where nobody says so now
     */
    void mark(StripInHand at, @Nullable Id<Finding> of, FindingMark mark, @Nullable PartSpot on);

    /** @param on where on its part, or null where nobody says so now */
    void another(StripInHand at, FindingMark mark, @Nullable PartSpot on);

    void words(StripInHand at, String spot, String words);

    void incident(StripInHand at, StripChoice.Of incident);

    /**
     * @param finding which of those there, or null for the last of them
     * @param on where on its part, or null for nowhere in particular
     */
    void place(StripInHand at, @Nullable Id<Finding> finding, @Nullable PartSpot on);

    void correct();

    void takeAway();

    /** Back to the table. */
    void back();
}
