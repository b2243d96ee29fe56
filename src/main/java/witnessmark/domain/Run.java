package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;

/**
 * Once out and back: what moves every life in the engine and the car.
 *
 * @param engine the engine that ran
 * @param car the car it was in, or null on the dyno
 * @param event at which event, or null
 * @param planned which run of its timetable, or null
 * @param kind what it was for
 * @param name Practice 1, Race 2, pull series …
 * @param start out at
 * @param startKnown how that time is known
 * @param in back in, or null: then out + running time, assumed
 * @param driver or null when not recorded
 * @param running time with the engine turning, more than none
 * @param knownBy how running time and the other counters are known
 * @param track time on the track, part of running, or null
 * @param warmUp time warming up, part of running, or null
 * @param loaded or null when not recorded
 * @param highSpeed or null when not recorded
 * @param distance or null when not recorded
 * @param laps or null when not recorded
 * @param raceStarts practice starts count; or null when not recorded
 * @param engineStarts or null when not recorded
 * @param heatCycles or null when not recorded
 * @param pulls full-load sweeps on the dyno, or null
 * @param overRevs null means not read, never none
 * @param highest or null when not recorded
 * @param highestFrom what that was read from, or null
 * @param waterHighest or null when not recorded
 * @param oilHighest or null when not recorded
 * @param oilPressure lowest hot, under load, or null when not recorded
 * @param oilAdded or null when not recorded
 * @param ambient or null when not recorded
 * @param driverAsked about a missed gear
 * @param remarks anything to tell
 * @param asTyped what was typed, field=text, one a line; empty when not typed by a person
 * @param queried names of fields whose query was overruled, separated by spaces
 * @param perhapsSame the run this may be again; while set it counts nowhere
 */
public record Run(
        Id<Engine> engine,
        @Nullable Id<Car> car,
        @Nullable Id<Event> event,
        @Nullable Id<PlannedRun> planned,
        RunKind kind,
        String name,
        Moment start,
        StartKnown startKnown,
        @Nullable Moment in,
        @Nullable Id<Person> driver,
        RunningTime running,
        KnownBy knownBy,
        @Nullable RunningTime track,
        @Nullable RunningTime warmUp,
        @Nullable RunningTime loaded,
        @Nullable RunningTime highSpeed,
        @Nullable Distance distance,
        @Nullable Integer laps,
        @Nullable Integer raceStarts,
        @Nullable Integer engineStarts,
        @Nullable Integer heatCycles,
        @Nullable Integer pulls,
        @Nullable Integer overRevs,
        @Nullable EngineSpeed highest,
        @Nullable SpeedSource highestFrom,
        @Nullable Temperature waterHighest,
        @Nullable Temperature oilHighest,
        @Nullable Pressure oilPressure,
        @Nullable Volume oilAdded,
        @Nullable Temperature ambient,
        DriverAsked driverAsked,
        String remarks,
        String asTyped,
        String queried,
        @Nullable Id<Run> perhapsSame)
        implements Fact {
    public Run {
        if (running.millis() == 0) {
            throw new IllegalArgumentException("a run lasts longer than nothing; one not taken is a missed run");
        }
        if (in != null && in.isBefore(start)) {
            throw new IllegalArgumentException("a run comes back after it went out");
        }
        notNegative(laps, raceStarts, engineStarts, heatCycles, pulls, overRevs);
    }

    @Override
    public Moment happened() {
        return start;
    }

    /** When it came back: as written, or out plus running time. */
    public Moment back() {
        return in != null ? in : start.plus(running);
    }

    /** What this run adds to a counter, in the counter's unit, or null when it does not say, or no run can. */
    public @Nullable Long of(Counter counter) {
        return switch (counter) {
            case RUNNING -> Long.valueOf(running.millis());
            case LOADED -> loaded == null ? null : Long.valueOf(loaded.millis());
            case HIGH_SPEED -> highSpeed == null ? null : Long.valueOf(highSpeed.millis());
            case DISTANCE -> distance == null ? null : Long.valueOf(distance.metres());
            case LAPS -> count(laps);
            case RACE_STARTS -> count(raceStarts);
            case ENGINE_STARTS -> count(engineStarts);
            case HEAT_CYCLES -> count(heatCycles);
            case PULLS -> count(pulls);
            case OVER_REVS -> count(overRevs);
            case AGE, USES, TORQUE_CYCLES -> null;
        };
    }

    /**
     * The same run, marked as perhaps the same as another.
     *
     * @param other the run this may be again, or null when it is one of its own
     */
    public Run perhapsSameAs(@Nullable Id<Run> other) {
        return with(engine, other);
    }

    /** The same run on another engine: it was written on the wrong one. */
    public Run onEngine(Id<Engine> other) {
        return with(other, perhapsSame);
    }

    private Run with(Id<Engine> ran, @Nullable Id<Run> same) {
        return new Run(
                ran,
                car,
                event,
                planned,
                kind,
                name,
                start,
                startKnown,
                in,
                driver,
                running,
                knownBy,
                track,
                warmUp,
                loaded,
                highSpeed,
                distance,
                laps,
                raceStarts,
                engineStarts,
                heatCycles,
                pulls,
                overRevs,
                highest,
                highestFrom,
                waterHighest,
                oilHighest,
                oilPressure,
                oilAdded,
                ambient,
                driverAsked,
                remarks,
                asTyped,
                queried,
                same);
    }

    private static @Nullable Long count(@Nullable Integer figure) {
        return figure == null ? null : Long.valueOf(figure);
    }

    private static void notNegative(@Nullable Integer... counts) {
        for (Integer count : counts) {
            if (count != null && count < 0) {
                throw new IllegalArgumentException("a count is 0 or more, not " + count);
            }
        }
    }
}
