package witnessmark.logbook.run;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.quantity.Moment;

/**
 * What stands in the sheet before anybody types: car, event, the next run of its timetable, driver, date, time out.
 * What was measured on a run is never carried over to another.
 */
final class RunDefaults {
    /** A date as the sheet shows it; the weekday is how people check it. */
    static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

    private final Facts facts;
    private final RunsBefore before;
    private final NextRun next;

    RunDefaults(Facts facts, RunsBefore before) {
        this.facts = facts;
        this.before = before;
        this.next = new NextRun(facts);
    }

    /**
     * @param wanted the car to log, or null for the car logged last
     * @param today the day taken for today
     */
    Map<RunField, String> fill(@Nullable Id<Car> wanted, LocalDate today) {
        Map<RunField, String> fields = new EnumMap<>(RunField.class);
        Optional<Id<Car>> car = wanted != null ? Optional.of(wanted) : lastCar();
        car.ifPresent(id -> fields.put(RunField.CAR, Keys.car(id)));
        fields.put(RunField.DATE, DAY.format(today));
        fields.putAll(forDay(car.orElse(null), today, today));
        fields.putAll(forCar(car.orElse(null)));
        // how the last run was measured says nothing about this one
        fields.put(RunField.KNOWN, HowKnown.TIMED.code());
        fields.put(RunField.HEAT_CYCLES, "1");
        fields.put(RunField.DRIVER_ASKED, witnessmark.domain.DriverAsked.NOT_ASKED.code());
        return fields;
    }

    /** What follows from the car: who drove it last. */
    Map<RunField, String> forCar(@Nullable Id<Car> car) {
        Map<RunField, String> fields = new EnumMap<>(RunField.class);
        fields.put(RunField.DRIVER, lastOf(car).map(Run::driver).map(Id::text).orElse(""));
        return fields;
    }

    /** What follows from the day and the car: event, the next run, time out, race starts. */
    Map<RunField, String> forDay(@Nullable Id<Car> car, LocalDate day, LocalDate today) {
        Map<RunField, String> fields = new EnumMap<>(RunField.class);
        Optional<Entry<Event>> event = next.eventOn(day);
        fields.put(RunField.EVENT, event.map(e -> e.id().text()).orElse(""));
        fields.putAll(forEvent(event.map(Entry::id).orElse(null), car, day, today));
        return fields;
    }

    /**
     * What follows from the event: the next run of its timetable that the car has not taken, of that day when it is one
     * of the event's.
     */
    Map<RunField, String> forEvent(
            @Nullable Id<Event> event, @Nullable Id<Car> car, @Nullable LocalDate day, LocalDate today) {
        Map<RunField, String> fields = new EnumMap<>(RunField.class);
        Optional<Entry<PlannedRun>> planned = event == null ? Optional.empty() : next.next(event, car, day);
        RunKind other = event == null ? RunKind.TEST : RunKind.OTHER;
        fields.put(RunField.PLANNED, planned.map(p -> Keys.planned(p.id())).orElse(Keys.kind(other)));
        fields.putAll(forPlanned(planned.map(Entry::fact).orElse(null), other, today));
        if (event != null && planned.isEmpty()) {
            withinEvent(facts.of(Event.class).get(event), day, today)
                    .ifPresent(last -> fields.put(RunField.DATE, DAY.format(last)));
        }
        return fields;
    }

    /** The last day of an event that is over, when the day given is none of its days. */
    private static Optional<LocalDate> withinEvent(Event event, @Nullable LocalDate day, LocalDate today) {
        boolean within = day != null && !day.isBefore(event.firstDay()) && !day.isAfter(event.lastDay());
        return within || event.lastDay().isAfter(today) ? Optional.empty() : Optional.of(event.lastDay());
    }

    /**
     * What follows from the run picked: its day unless that is to come, its time out, one race start for a race.
     *
     * @param kind what a run that is not in the timetable is for
     */
    Map<RunField, String> forPlanned(@Nullable PlannedRun planned, RunKind kind, LocalDate today) {
        Map<RunField, String> fields = new EnumMap<>(RunField.class);
        RunKind what = planned == null ? kind : planned.kind();
        fields.put(RunField.RACE_STARTS, what == RunKind.RACE ? "1" : "0");
        fields.put(
                RunField.OUT_AT,
                planned == null || planned.out() == null ? "" : planned.out().toString());
        if (planned != null && !planned.day().isAfter(today)) {
            fields.put(RunField.DATE, DAY.format(planned.day()));
        }
        return fields;
    }

    private Optional<Run> lastOf(@Nullable Id<Car> car) {
        return before.last(run -> car == null || car.equals(run.car())).map(Entry::fact);
    }

    /** The car whose last run went out last; of several that went out together, the first in the team's order. */
    private Optional<Id<Car>> lastCar() {
        Optional<Moment> last =
                before.last(run -> run.car() != null).map(run -> run.fact().start());
        return facts.of(Car.class)
                .inForce()
                .map(Entry::id)
                .filter(car -> last.isEmpty()
                        || before.last(run -> car.equals(run.car()))
                                .filter(run -> run.fact().start().compareTo(last.get()) == 0)
                                .isPresent())
                .findFirst();
    }
}
