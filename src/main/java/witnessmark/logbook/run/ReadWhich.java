package witnessmark.logbook.run;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Person;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.RunKind;
import witnessmark.domain.StartKnown;
import witnessmark.logbook.port.Today;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedClock;
import witnessmark.quantity.typed.TypedDate;

/** Reads the upper part of the sheet: car and engine, event, run, day and time out. */
final class ReadWhich {
    private final Facts facts;
    private final ZoneId home;
    private final RunsBefore before;
    private final LocalDate today;
    private final EstimatedOut estimated;
    private final DayOrder days;

    /** @param home the team's zone, for runs at no event */
    ReadWhich(Facts facts, ZoneId home, RunsBefore before, Today today, DayOrder days) {
        this.facts = facts;
        this.home = home;
        this.before = before;
        this.today = today.day();
        this.estimated = new EstimatedOut(before, today);
        this.days = days;
    }

    /** Reads these fields and puts what each came to in {@code out}. */
    Which read(Map<RunField, String> typed, @Nullable RunningTime running, Map<RunField, FieldReading> out) {
        String place = typed.getOrDefault(RunField.CAR, "");
        @Nullable Id<Car> car = Keys.car(place).orElse(null);
        @Nullable Id<Event> event = id(typed.getOrDefault(RunField.EVENT, ""));
        String which = typed.getOrDefault(RunField.PLANNED, "");
        @Nullable Id<PlannedRun> planned = Keys.planned(which).orElse(null);
        @Nullable Id<Person> driver = id(typed.getOrDefault(RunField.DRIVER, ""));
        @Nullable LocalDate day = day(typed.getOrDefault(RunField.DATE, ""), out);
        ZoneId zone = event == null ? home : facts.of(Event.class).get(event).zone();
        String clock = typed.getOrDefault(RunField.OUT_AT, "");
        Out start = day == null ? onNoDay(clock, out) : start(clock, day, zone, planned, car, running, out);
        @Nullable
        Id<Engine> engine = car == null
                ? Keys.engine(place).orElse(null)
                : engineIn(car, start.at() != null ? start.at() : day == null ? null : Moment.endOf(day, zone));
        RunKind kind = planned != null
                ? facts.of(PlannedRun.class).get(planned).kind()
                : car == null ? RunKind.DYNO : Keys.kind(which).orElse(RunKind.OTHER);
        if (car == null && engine == null) {
            Note.Kind note = facts.of(Car.class).inForce().findAny().isEmpty() ? Note.Kind.NO_CAR_YET : Note.Kind.NONE;
            out.put(RunField.CAR, new FieldReading(Note.of(note), Problem.of(ProblemKind.NEEDED, RunField.CAR), null));
        }
        return new Which(car, engine, event, planned, kind, driver, day, start.at(), start.known());
    }

    /** A time out and how it is known. */
    private record Out(@Nullable Moment at, StartKnown known) {}

    private @Nullable LocalDate day(String text, Map<RunField, FieldReading> out) {
        if (text.isBlank()) {
            out.put(RunField.DATE, FieldReading.wrong(Problem.of(ProblemKind.NEEDED, RunField.DATE)));
            return null;
        }
        Typed<LocalDate> typed = TypedDate.read(text, today, days);
        if (typed instanceof Typed.Read<LocalDate> read) {
            long ago = ChronoUnit.DAYS.between(read.value(), today);
            out.put(
                    RunField.DATE,
                    ago < 0
                            ? FieldReading.wrong(Problem.of(ProblemKind.RUN_IN_FUTURE, read.value(), today))
                            : FieldReading.fine(
                                    ago == 0
                                            ? Note.of(Note.Kind.TODAY, read.value())
                                            : Note.of(Note.Kind.DAYS_AGO, ago, read.value())));
            return read.value();
        }
        out.put(RunField.DATE, FieldReading.wrong(problem(RunField.DATE, text, typed)));
        return null;
    }

    /** Without a day it is no moment, but whether it reads can be said. */
    private static Out onNoDay(String text, Map<RunField, FieldReading> out) {
        Typed<LocalTime> typed = TypedClock.read(text);
        boolean fine = text.isBlank() || isBeforeOrAfter(text) || typed instanceof Typed.Read<LocalTime>;
        out.put(
                RunField.OUT_AT,
                fine
                        ? FieldReading.fine(Note.of(Note.Kind.NONE))
                        : FieldReading.wrong(problem(RunField.OUT_AT, text, typed)));
        return new Out(null, StartKnown.TYPED);
    }

    private Out start(
            String text,
            LocalDate day,
            ZoneId zone,
            @Nullable Id<PlannedRun> planned,
            @Nullable Id<Car> car,
            @Nullable RunningTime running,
            Map<RunField, FieldReading> out) {
        Optional<EngineInCar> changed = car == null ? Optional.empty() : before.engineChangedOn(car, day);
        if (changed.isPresent() && (text.isBlank() || isBeforeOrAfter(text))) {
            return aroundChange(text, changed.get(), running, out);
        }
        if (text.isBlank()) {
            Moment guess = estimated.on(day, zone, car, running);
            out.put(RunField.OUT_AT, FieldReading.fine(Note.of(Note.Kind.ESTIMATED, guess)));
            return new Out(guess, StartKnown.ESTIMATE);
        }
        Typed<LocalTime> typed = TypedClock.read(text);
        if (!(typed instanceof Typed.Read<LocalTime> read)) {
            out.put(RunField.OUT_AT, FieldReading.wrong(problem(RunField.OUT_AT, text, typed)));
            return new Out(null, StartKnown.TYPED);
        }
        boolean listed = planned != null
                && read.value().equals(facts.of(PlannedRun.class).get(planned).out());
        Moment at = Moment.of(day.atTime(read.value()), zone);
        out.put(
                RunField.OUT_AT,
                FieldReading.fine(listed ? Note.of(Note.Kind.TIMETABLE) : Note.of(Note.Kind.TYPED, at)));
        return new Out(at, listed ? StartKnown.TIMETABLE : StartKnown.TYPED);
    }

    /** With no time given on a day the engine was changed, only the crew can say which engine takes the hours. */
    private Out aroundChange(
            String text, EngineInCar changed, @Nullable RunningTime running, Map<RunField, FieldReading> out) {
        if (text.isBlank()) {
            out.put(
                    RunField.OUT_AT,
                    FieldReading.wrong(Problem.of(
                            ProblemKind.BEFORE_OR_AFTER_CHANGE,
                            facts.of(Engine.class).get(changed.engine()).number(),
                            changed.from())));
            return new Out(null, StartKnown.ESTIMATE);
        }
        RunningTime length = running == null ? new RunningTime(0) : running;
        BesideChange beside = new BesideChange(facts, changed.car(), changed);
        Moment guess = text.strip().equalsIgnoreCase("before") ? beside.before(length) : beside.after(length);
        out.put(RunField.OUT_AT, FieldReading.fine(Note.of(Note.Kind.ESTIMATED, guess)));
        return new Out(guess, StartKnown.ESTIMATE);
    }

    private static boolean isBeforeOrAfter(String text) {
        String word = text.strip();
        return word.equalsIgnoreCase("before") || word.equalsIgnoreCase("after");
    }

    private @Nullable Id<Engine> engineIn(Id<Car> car, @Nullable Moment at) {
        return at == null
                ? null
                : before.engineIn(car, at).map(EngineInCar::engine).orElse(null);
    }

    private static <F extends witnessmark.domain.Fact> @Nullable Id<F> id(String key) {
        return key.isEmpty() ? null : Id.parse(key);
    }

    private static Problem problem(RunField field, String text, Typed<?> typed) {
        if (typed instanceof Typed.Two<?> two) {
            return Problem.of(ProblemKind.TWO_READINGS, field, text.strip(), two.first(), two.second());
        }
        String example = typed instanceof Typed.Unreadable<?> no ? no.example() : "";
        return Problem.of(ProblemKind.CANNOT_READ, field, text.strip(), example);
    }
}
