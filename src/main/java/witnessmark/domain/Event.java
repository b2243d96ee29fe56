package witnessmark.domain;

import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A race meeting, a test, a day on the dyno.
 *
 * @param name unique within the logbook
 * @param circuit where
 * @param firstDay first day of running
 * @param lastDay last day of running
 * @param zone the zone of its clocks
 * @param truckLeaves when it is loaded and gone, or null
 * @param note anything else
 */
public record Event(
        String name,
        String circuit,
        LocalDate firstDay,
        LocalDate lastDay,
        ZoneId zone,
        @Nullable Moment truckLeaves,
        String note)
        implements Fact {
    public Event {
        if (lastDay.isBefore(firstDay)) {
            throw new IllegalArgumentException("an event ends after it begins");
        }
    }

    @Override
    public String knownAs() {
        return name;
    }
}
