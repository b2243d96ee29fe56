package witnessmark.logbook.run;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.Person;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.RunKind;
import witnessmark.domain.StartKnown;
import witnessmark.quantity.Moment;

/**
 * Which run it was: what the upper part of the sheet settles.
 *
 * @param car the car, or null on the dyno
 * @param engine the engine that ran, or null while it cannot be told
 * @param event the event, or null
 * @param planned the run of the timetable, or null
 * @param kind what it was for
 * @param driver who drove, or null
 * @param day on which day, or null while it cannot be read
 * @param start out at, or null while it cannot be told
 * @param startKnown how that time is known
 */
record Which(
        @Nullable Id<Car> car,
        @Nullable Id<Engine> engine,
        @Nullable Id<Event> event,
        @Nullable Id<PlannedRun> planned,
        RunKind kind,
        @Nullable Id<Person> driver,
        @Nullable LocalDate day,
        @Nullable Moment start,
        StartKnown startKnown) {
    boolean onDyno() {
        return car == null;
    }
}
