package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * Work planned: on what, before which event, by whom.
 *
 * @param what what is to be done
 * @param engine on which engine, or null
 * @param part on which part, or null
 * @param car on which car, or null
 * @param before before which event, or null
 * @param who who does it; empty when nobody is named
 * @param minutesExpected minutes of work expected, or null
 * @param minutesSpent minutes of work spent, or null
 * @param waitingFor what it waits for; empty when nothing
 * @param run the run whose remark asked for it, or null
 * @param asked when it was asked for
 * @param by who asked
 * @param done when it was done, or null while it is open
 * @param result what came of it
 */
public record Job(
        String what,
        @Nullable Id<Engine> engine,
        @Nullable Id<Part> part,
        @Nullable Id<Car> car,
        @Nullable Id<Event> before,
        String who,
        @Nullable Integer minutesExpected,
        @Nullable Integer minutesSpent,
        String waitingFor,
        @Nullable Id<Run> run,
        Moment asked,
        String by,
        @Nullable Moment done,
        String result)
        implements Fact {
    public Job {
        if (what.isBlank()) {
            throw new IllegalArgumentException("a job says what is to be done");
        }
        if (minutesExpected != null && minutesExpected < 0 || minutesSpent != null && minutesSpent < 0) {
            throw new IllegalArgumentException("minutes of work are 0 or more");
        }
    }

    @Override
    public Moment happened() {
        return asked;
    }
}
