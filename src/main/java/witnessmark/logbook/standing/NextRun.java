package witnessmark.logbook.standing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.ledger.result.LookAt;
import witnessmark.quantity.Moment;

/**
 * The next run of a car while an event runs, and what is to be looked at before it. It says what nobody has looked at,
 * never that the engine may run.
 *
 * @param car which car
 * @param name the car's name
 * @param engine the number of the engine in it, or null when none is
 * @param planned the run of the timetable that comes next
 * @param out when it is to go out; null when no time is set
 * @param last the last run of the car, or null when it never ran
 * @param looks what is to be looked at, what was told first, then what went in, then what always is
 * @param marks what is held, over or not known on it, and what runs out in that run or before, worst first
 */
public record NextRun(
        Id<Car> car,
        String name,
        @Nullable String engine,
        PlannedRun planned,
        @Nullable Moment out,
        @Nullable Entry<Run> last,
        List<LookAt> looks,
        List<MarkOn> marks) {
    public NextRun {
        looks = List.copyOf(looks);
        marks = List.copyOf(marks);
    }

    /** How many nobody has looked at. */
    public int open() {
        return (int) looks.stream().filter(look -> look.done() == null).count();
    }
}
