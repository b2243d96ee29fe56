package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * What is asked for before a fix is taken as proven. It is set before the engine runs.
 *
 * @param incident of which incident
 * @param action of which action, or null for all that was done about the incident
 * @param kind running, a look or a reading
 * @param what what is looked at or read, and how it has to be
 * @param after after so much running since the fix; null where it may be at any time
 * @param times so many times, 1 or more
 * @param reading the kind of reading; null for the others
 * @param set when it was set
 * @param by by whom
 */
public record ProofWanted(
        Id<Incident> incident,
        @Nullable Id<CaseAction> action,
        ProofBy kind,
        String what,
        @Nullable RunningTime after,
        int times,
        @Nullable ReadingKind reading,
        Moment set,
        String by)
        implements Fact {
    public ProofWanted {
        if (kind == ProofBy.RUNNING ? after == null || after.millis() <= 0 : what.isBlank()) {
            throw new IllegalArgumentException("proof is so much running, or says what is looked at");
        }
        if ((reading != null) != (kind == ProofBy.READING)) {
            throw new IllegalArgumentException("proof by a reading names its kind, and no other does");
        }
        if (times < 1) {
            throw new IllegalArgumentException("proof is asked for once or more");
        }
    }

    @Override
    public Moment happened() {
        return set;
    }
}
