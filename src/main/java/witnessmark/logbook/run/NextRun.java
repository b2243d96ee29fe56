package witnessmark.logbook.run;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.ahead.RunsTaken;

/** Which event a day belongs to, and which run of its timetable a car takes next. */
final class NextRun {
    /** A timetable slips; what goes out further off than this is another run. Common practice, no source. */
    private static final long NEAR_MINUTES = 120;

    private final Facts facts;
    private final RunsTaken taken;

    NextRun(Facts facts) {
        this.facts = facts;
        this.taken = RunsTaken.written(facts);
    }

    /** The event whose days include this one; the latest begun, should two overlap. */
    Optional<Entry<Event>> eventOn(LocalDate day) {
        return facts.of(Event.class)
                .inForce()
                .filter(event -> !day.isBefore(event.fact().firstDay())
                        && !day.isAfter(event.fact().lastDay()))
                .max(Comparator.comparing(event -> event.fact().firstDay()));
    }

    /** The first event that begins after this day. */
    Optional<Entry<Event>> eventAfter(LocalDate day) {
        return facts.of(Event.class)
                .inForce()
                .filter(event -> event.fact().firstDay().isAfter(day))
                .min(Comparator.comparing(event -> event.fact().firstDay()));
    }

    /** The timetable of an event, in order. */
    List<Entry<PlannedRun>> timetable(Id<Event> event) {
        return facts.of(PlannedRun.class)
                .inForce()
                .filter(planned -> planned.fact().event().equals(event))
                .sorted(Comparator.comparingInt(planned -> planned.fact().ordinal()))
                .toList();
    }

    /**
     * The first run of the timetable that this car has neither taken nor missed. On a day of the event it is one of that
     * day: a run left over from another is picked by whoever means it, and never moves the day that was given.
     */
    Optional<Entry<PlannedRun>> next(Id<Event> event, @Nullable Id<Car> car, @Nullable LocalDate day) {
        Event when = facts.of(Event.class).get(event);
        boolean there = day != null && !day.isBefore(when.firstDay()) && !day.isAfter(when.lastDay());
        return left(event, car).stream()
                .filter(planned -> !there || planned.fact().day().equals(day))
                .findFirst();
    }

    /** The run of that day this car has neither taken nor missed whose time is nearest to this one, within two hours. */
    Optional<Entry<PlannedRun>> near(Id<Event> event, @Nullable Id<Car> car, LocalDate day, LocalTime out) {
        return left(event, car).stream()
                .filter(planned -> planned.fact().day().equals(day) && apart(planned.fact(), out) <= NEAR_MINUTES)
                .min(Comparator.comparingLong(planned -> apart(planned.fact(), out)));
    }

    private static long apart(PlannedRun planned, LocalTime out) {
        return planned.out() == null ? Long.MAX_VALUE : Math.abs(ChronoUnit.MINUTES.between(planned.out(), out));
    }

    /** What is left of the timetable for this car, in order. */
    List<Entry<PlannedRun>> left(Id<Event> event, @Nullable Id<Car> car) {
        return timetable(event).stream().filter(planned -> !taken(planned, car)).toList();
    }

    /** Whether a car has it behind it already; nobody has while no car is given. */
    boolean taken(Entry<PlannedRun> planned, @Nullable Id<Car> car) {
        return car != null && taken.has(car, planned);
    }
}
