package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * Something to be tried or measured that decides on a cause.
 *
 * @param cause on which cause
 * @param what what is to be done
 * @param who who does it; empty while nobody does
 * @param due by which day, or null
 * @param done when it was done, or null while it is not
 * @param found what came of it; empty while it is not done
 */
public record CauseTest(
        Id<Cause> cause,
        String what,
        String who,
        @Nullable LocalDate due,
        @Nullable Moment done,
        String found) implements Fact {
    public CauseTest {
        if (what.isBlank()) {
            throw new IllegalArgumentException("a test says what is to be done");
        }
        if (done != null && found.isBlank()) {
            throw new IllegalArgumentException("a test that is done found something");
        }
    }

    @Override
    public @Nullable Moment happened() {
        return done;
    }
}
