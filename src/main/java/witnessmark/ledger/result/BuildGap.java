package witnessmark.ledger.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;

/**
 * What is still open in a build.
 *
 * @param kind what kind of gap
 * @param position where, or null when it is of no position
 * @param joint of which group of fasteners, or null
 * @param found what was found on what is there, the worst first; empty for every other kind
 * @param count how many figures or lessons, else 1
 */
public record BuildGap(
        Kind kind,
        @Nullable BuildPosition position,
        @Nullable JointGroup joint,
        List<Entry<Finding>> found,
        int count) {
    public BuildGap {
        found = List.copyOf(found);
    }

    /** What can be open in a build, worst first. */
    public enum Kind {
        /** What is in a position is held. */
        HELD,
        /** What is in a position is at its limit or past it. */
        OVER,
        /** What is in a position was found heavily marked or failed when somebody looked last. */
        MARKED,
        /** It is not known how what is in a position stands, and its failure can wreck the engine. */
        NOT_KNOWN,
        /** A position is empty that must not be. */
        EMPTY,
        /** A group of fasteners is not tightened. */
        NOT_TIGHTENED,
        /** Lessons ask for what is not met or not answered: its sheet cannot be signed so. */
        LESSON,
        /** Figures of the build sheet are outside their limits. */
        OUTSIDE,
        /** Figures that a limit asks for are not measured. */
        NOT_MEASURED,
        /** A torque without its lubricant. */
        NO_LUBRICANT,
        /** Nobody else looked on while a group was tightened. */
        SEEN_BY_ONE,
        /** What is in a position falls due within the next event, or the one after it. */
        DUE,
        /** The build is not closed. */
        NOT_CLOSED,
        /** Its sheet is not signed. */
        NOT_SIGNED,
        /** Its sheet is signed, and nobody else looked. */
        SIGNED_BY_ONE
    }
}
