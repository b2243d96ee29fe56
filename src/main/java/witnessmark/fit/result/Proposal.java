package witnessmark.fit.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;

/**
 * A way to what is wanted, and what stands against it. It is worked out; whoever builds the engine decides.
 *
 * @param work what would be done
 * @param reached the figure wanted, as it would then be: the nearest place first
 * @param before every answer it changes, as it is
 * @param after the same answers as they would be
 * @param against why it cannot be; empty when nothing that is written down stands against it
 */
public record Proposal(
        Work work, @Nullable Check reached, List<Answer> before, List<Answer> after, List<Obstacle> against) {
    public Proposal {
        before = List.copyOf(before);
        after = List.copyOf(after);
        against = List.copyOf(against);
    }

    public boolean possible() {
        return against.isEmpty();
    }

    /**
     * Why a way is shut.
     *
     * @param why in which way
     * @param kind which figure stands against it
     * @param check the figure as it would be, or null when there is none
     */
    public record Obstacle(
            Why why, MeasureKind kind, @Nullable Check check) {}

    /** How a way can be shut. */
    public enum Why {
        /** A figure would be outside its limit, and is not now, or is further outside. */
        OUTSIDE_AFTER,
        /** Material would have to be put on. */
        ADDS_MATERIAL,
        /** More would come off than its maker allows. */
        MORE_THAN_ALLOWED,
        /** Its maker does not say that any may come off. */
        NOT_ALLOWED,
        /** Something it is worked out of is not known. */
        NOT_KNOWN,
        /** It does not come to what is wanted. */
        NOT_REACHED
    }
}
