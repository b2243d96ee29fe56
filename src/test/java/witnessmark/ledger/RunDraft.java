package witnessmark.ledger;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.StartKnown;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;

/** A run about to be written: timed, with nothing but running time unless told otherwise. */
public final class RunDraft {
    private final Id<Engine> engine;
    private final @Nullable Id<Car> car;
    private final Moment start;
    private final RunningTime running;
    private final Map<Counter, Long> counts = new EnumMap<>(Counter.class);
    private final Map<Counter, HowKnown> how = new EnumMap<>(Counter.class);
    private String name = "run";
    private StartKnown startKnown = StartKnown.TYPED;
    private @Nullable Id<Event> event;
    private @Nullable Id<PlannedRun> planned;
    private @Nullable Moment in;
    private @Nullable RunningTime track;
    private @Nullable RunningTime warmUp;
    private @Nullable Id<Run> perhapsSame;
    private @Nullable RunKind kind;
    private @Nullable EngineSpeed highest;
    private @Nullable Temperature water;
    private @Nullable Temperature oil;
    private @Nullable Pressure oilPressure;

    public RunDraft(Id<Engine> engine, @Nullable Id<Car> car, Moment start, RunningTime running) {
        this.engine = engine;
        this.car = car;
        this.start = start;
        this.running = running;
        how.put(Counter.RUNNING, HowKnown.TIMED);
    }

    public RunDraft named(String words) {
        name = words;
        return this;
    }

    /** Nobody says when it went out. */
    public RunDraft estimated() {
        startKnown = StartKnown.ESTIMATE;
        return this;
    }

    /** What it adds to a counter other than running time. */
    public RunDraft with(Counter counter, long amount) {
        counts.put(counter, amount);
        return this;
    }

    public RunDraft knownBy(Counter counter, HowKnown by) {
        how.put(counter, by);
        return this;
    }

    public RunDraft planned(@Nullable Id<Event> at, @Nullable Id<PlannedRun> run) {
        event = at;
        planned = run;
        return this;
    }

    public RunDraft in(@Nullable Moment back) {
        in = back;
        return this;
    }

    public RunDraft track(RunningTime time) {
        track = time;
        return this;
    }

    public RunDraft warmUp(RunningTime time) {
        warmUp = time;
        return this;
    }

    public RunDraft perhapsSame(@Nullable Id<Run> other) {
        perhapsSame = other;
        return this;
    }

    public RunDraft kind(RunKind what) {
        kind = what;
        return this;
    }

    public RunDraft highest(@Nullable EngineSpeed speed) {
        highest = speed;
        return this;
    }

    public RunDraft water(Temperature temperature) {
        water = temperature;
        return this;
    }

    public RunDraft oil(Temperature temperature) {
        oil = temperature;
        return this;
    }

    public RunDraft oilPressure(Pressure pressure) {
        oilPressure = pressure;
        return this;
    }

    public Run written() {
        return new Run(
                engine,
                car,
                event,
                planned,
                kind != null ? kind : car == null ? RunKind.DYNO : RunKind.PRACTICE,
                name,
                start,
                startKnown,
                in,
                null,
                running,
                new KnownBy(how),
                track,
                warmUp,
                time(Counter.LOADED),
                time(Counter.HIGH_SPEED),
                counts.containsKey(Counter.DISTANCE) ? new Distance(counts.get(Counter.DISTANCE)) : null,
                count(Counter.LAPS),
                count(Counter.RACE_STARTS),
                count(Counter.ENGINE_STARTS),
                count(Counter.HEAT_CYCLES),
                count(Counter.PULLS),
                count(Counter.OVER_REVS),
                highest,
                null,
                water,
                oil,
                oilPressure,
                null,
                null,
                DriverAsked.NOT_ASKED,
                "",
                "",
                "",
                perhapsSame);
    }

    private @Nullable RunningTime time(Counter counter) {
        Long millis = counts.get(counter);
        return millis == null ? null : new RunningTime(millis);
    }

    private @Nullable Integer count(Counter counter) {
        Long amount = counts.get(counter);
        return amount == null ? null : Integer.valueOf(Math.toIntExact(amount));
    }
}
