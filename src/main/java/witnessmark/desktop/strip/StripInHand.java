package witnessmark.desktop.strip;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.Id;
import witnessmark.logbook.strip.WriteStrip;

/**
 * A position of a strip, and which of what was found there is in hand. What is written is of that one, whichever is in hand by then.
 *
 * @param seen which of what was found there, or null where nobody looked
 */
record StripInHand(WriteStrip.Where where, StripLines.Cell cell, StripLines.@Nullable Seen seen) {
    @Nullable
    Id<Finding> finding() {
        return seen == null ? null : seen.finding();
    }

    @Nullable
    FindingMark mark() {
        return seen == null ? null : seen.mark();
    }

    String incident() {
        return seen == null ? "" : seen.incident();
    }

    Typed written() {
        return seen == null ? new Typed("", "") : new Typed(seen.spot(), seen.words());
    }

    PartSpots spots() {
        return seen == null ? cell.spots() : seen.spots();
    }

    /** What is typed of a mark. */
    record Typed(String spot, String words) {}
}
