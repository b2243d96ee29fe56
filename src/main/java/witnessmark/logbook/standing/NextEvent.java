package witnessmark.logbook.standing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.quantity.Moment;

/**
 * The event that runs on the day looked at, or the first after it.
 *
 * @param id which event
 * @param event as written
 * @param day the day looked at
 * @param cars how many cars are entered; none when no entry is written down, which says nothing of who goes
 * @param timetable runs in its timetable
 * @param planned the same, counted once for each car entered
 * @param left how many of these are to come: of today or later, neither run nor missed
 */
public record NextEvent(Id<Event> id, Event event, LocalDate day, int cars, int timetable, int planned, int left) {
    /** Whether it runs on the day looked at. */
    public boolean running() {
        return !day.isBefore(event.firstDay());
    }

    /** Whether it runs and a run of its timetable is still to come, or none is written down that could be over. */
    public boolean runsLeft() {
        return running() && (planned == 0 || left > 0);
    }

    /** Days from the day looked at to when the truck leaves; to the first day of running when that is not known. */
    public long days() {
        Moment leaves = event.truckLeaves();
        return ChronoUnit.DAYS.between(day, leaves == null ? event.firstDay() : leaves.day());
    }

    /** When the truck leaves, when that is written down and not past. */
    public @Nullable Moment truckLeaves() {
        Moment leaves = event.truckLeaves();
        return leaves == null || leaves.day().isBefore(day) ? null : leaves;
    }
}
