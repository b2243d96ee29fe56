package witnessmark.fit.result.face;

import org.jspecify.annotations.Nullable;

/**
 * A low zone held against the looks before it.
 *
 * @param zone as seen now
 * @param state what it is
 * @param before the same zone as seen before, or null
 * @param comeback how fast it comes back, or null while there is nothing to hold it against
 */
public record ZoneFinding(
        LowZone zone,
        State state,
        @Nullable LowZone before,
        @Nullable Comeback comeback) {
    /** What a low zone is, the worst first. */
    public enum State {
        /** Seen before a skim that is fewer than 15 running hours back. */
        COMING_BACK,
        /** Never seen before on this face. */
        NEW,
        /** Seen before a skim, with more running since. */
        AGAIN,
        /** Seen before, and not skimmed since. */
        STILL,
        /** The first look at this face. */
        FIRST_LOOK
    }
}
