package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A start that was not taken. It is no run of zero length.
 *
 * @param event at which event
 * @param car which car
 * @param engine the engine in it, or null
 * @param planned which run of the timetable, or null when the whole event
 * @param at when it would have started
 * @param how why it was not taken
 * @param words in words
 */
public record MissedRun(
        Id<Event> event,
        Id<Car> car,
        @Nullable Id<Engine> engine,
        @Nullable Id<PlannedRun> planned,
        Moment at,
        MissedHow how,
        String words)
        implements Fact {
    @Override
    public Moment happened() {
        return at;
    }
}
