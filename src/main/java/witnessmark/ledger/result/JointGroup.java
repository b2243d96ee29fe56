package witnessmark.ledger.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Joint;
import witnessmark.domain.JointMethod;
import witnessmark.domain.PartKind;

/**
 * A group of fasteners that a build tightens.
 *
 * @param fasteners what they are
 * @param which which of them, as written
 * @param tightened how it was tightened in this build, the first stage first; empty while it was not
 * @param before the build before in which it was tightened last, or null
 */
public record JointGroup(
        PartKind fasteners,
        String which,
        List<Entry<Joint>> tightened,
        @Nullable Entry<Build> before) {
    public JointGroup {
        tightened = List.copyOf(tightened);
    }

    /** Whether a torque was written without what the threads were wetted with: the load at a torque hangs on that. */
    public boolean dry() {
        return tightened.stream()
                .map(Entry::fact)
                .anyMatch(joint -> joint.lubricant().isBlank() && joint.method() != JointMethod.STRETCH);
    }

    /** Whether nobody else looked on at one of its stages. */
    public boolean seenByOne() {
        return tightened.stream()
                .map(Entry::fact)
                .anyMatch(joint -> joint.second().isBlank() || joint.second().equals(joint.by()));
    }
}
