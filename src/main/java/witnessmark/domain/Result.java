package witnessmark.domain;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * What a car brought home from a run of an event.
 *
 * @param event at which event
 * @param car which car
 * @param planned of which run of the timetable, or null for the whole event
 * @param at when the run was, or would have been
 * @param how how it ended
 * @param place its place, or null when not placed
 * @param points points of the series, or null when there are none to be had
 * @param note anything else
 */
public record Result(
        Id<Event> event,
        Id<Car> car,
        @Nullable Id<PlannedRun> planned,
        Moment at,
        ResultHow how,
        @Nullable Integer place,
        @Nullable BigDecimal points,
        String note)
        implements Fact {
    public Result {
        if (place != null && place < 1) {
            throw new IllegalArgumentException("places count from 1");
        }
        points = points == null ? null : Decimals.plain(points);
    }

    @Override
    public Moment happened() {
        return at;
    }
}
