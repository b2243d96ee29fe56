package witnessmark.domain;

import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.RunningTime;

/**
 * A run in an event's timetable. It exists once per car.
 *
 * @param event of which event
 * @param ordinal its turn in the timetable
 * @param kind what it is for
 * @param name Practice 1, Race 2 …; unique within the event
 * @param day on which day
 * @param out when it goes out, event's clock, or null when not set
 * @param expected expected running time, or null
 */
public record PlannedRun(
        Id<Event> event,
        int ordinal,
        RunKind kind,
        String name,
        LocalDate day,
        @Nullable LocalTime out,
        @Nullable RunningTime expected)
        implements Fact {
    @Override
    public String knownAs() {
        return name;
    }

    @Override
    public Id<?> knownWithin() {
        return event;
    }
}
