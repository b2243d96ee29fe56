package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * What is done about an incident.
 *
 * @param incident about which incident
 * @param cause against which cause, or null while none is known
 * @param kind what it is for
 * @param what what is done
 * @param who who does it; empty while nobody does
 * @param due by which day, or null
 * @param done when it was done, or null while it is not
 * @param note anything else
 */
public record CaseAction(
        Id<Incident> incident,
        @Nullable Id<Cause> cause,
        ActionKind kind,
        String what,
        String who,
        @Nullable LocalDate due,
        @Nullable Moment done,
        String note)
        implements Fact {
    public CaseAction {
        if (what.isBlank()) {
            throw new IllegalArgumentException("an action says what is done");
        }
    }

    @Override
    public @Nullable Moment happened() {
        return done;
    }
}
