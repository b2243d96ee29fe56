package witnessmark.logbook.run;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Run;
import witnessmark.ledger.Possible;
import witnessmark.ledger.Possible.Range;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedTime;

/**
 * The measured fields of the sheet. What can be read at all is {@link Possible}; what is usual for one engine comes from its own runs.
 */
final class Figures {
    final Figure<EngineSpeed> highest = new Figure<>(
            RunField.HIGHEST,
            TypedFigure::engineSpeed,
            speed -> Integer.toString(speed.rpm()),
            Run::highest,
            speed -> (long) speed.rpm(),
            rpm -> new EngineSpeed(Math.toIntExact(rpm)),
            Possible.SPEED.low().rpm(),
            Possible.SPEED.high().rpm(),
            150);
    final Figure<Integer> laps = count(RunField.LAPS, Run::laps, Possible.LAPS);
    final Figure<Integer> overRevs = count(RunField.OVER_REVS, Run::overRevs, Possible.OVER_REVS);
    final Figure<Integer> heatCycles = count(RunField.HEAT_CYCLES, Run::heatCycles, Possible.HEAT_CYCLES);
    final Figure<Integer> raceStarts = count(RunField.RACE_STARTS, Run::raceStarts, Possible.RACE_STARTS);
    final Figure<RunningTime> running = time(RunField.RUNNING, Run::running);
    final Figure<RunningTime> warmUp = time(RunField.WARM_UP, Run::warmUp);
    final Figure<RunningTime> track = time(RunField.TRACK, Run::track);
    final Figure<RunningTime> loaded = time(RunField.LOADED, Run::loaded);
    final Figure<Temperature> water;
    final Figure<Temperature> oil;
    final Figure<Temperature> ambient;
    final Figure<Pressure> oilPressure;
    final Figure<Volume> oilAdded;
    final Figure<Distance> distance;

    private final FieldUnits units;

    Figures(FieldUnits units) {
        this.units = units;
        this.water = temperature(RunField.WATER, Run::waterHighest, Possible.WATER);
        this.oil = temperature(RunField.OIL, Run::oilHighest, Possible.OIL);
        this.ambient = temperature(RunField.AMBIENT, Run::ambient, Possible.AMBIENT);
        this.oilPressure = new Figure<>(
                RunField.OIL_PRESSURE,
                text -> TypedFigure.read(text, units.pressure()),
                pressure -> AsTyped.figure(units.pressure(), pressure),
                Run::oilPressure,
                Pressure::pascals,
                Pressure::new,
                Possible.OIL_PRESSURE.low().pascals(),
                Possible.OIL_PRESSURE.high().pascals(),
                20_000);
        this.oilAdded = new Figure<>(
                RunField.OIL_ADDED,
                text -> TypedFigure.read(text, units.volume()),
                volume -> AsTyped.figure(units.volume(), volume),
                Run::oilAdded,
                Volume::microlitres,
                Volume::new,
                Possible.OIL_ADDED.low().microlitres(),
                Possible.OIL_ADDED.high().microlitres(),
                200_000);
        this.distance = new Figure<>(
                RunField.DISTANCE,
                text -> TypedFigure.read(text, units.distance()),
                distance -> AsTyped.figure(units.distance(), distance),
                Run::distance,
                Distance::metres,
                Distance::new,
                Possible.DISTANCE.low().metres(),
                Possible.DISTANCE.high().metres(),
                20_000);
    }

    /** All but running time, which every run needs and is judged by the rules of runs. */
    List<Figure<?>> all() {
        return List.of(
                laps,
                highest,
                overRevs,
                water,
                oil,
                oilPressure,
                oilAdded,
                warmUp,
                track,
                loaded,
                distance,
                heatCycles,
                raceStarts,
                ambient);
    }

    private static Figure<Integer> count(RunField field, Function<Run, @Nullable Integer> of, Range<Integer> possible) {
        return new Figure<>(
                field,
                TypedFigure::count,
                count -> Integer.toString(count),
                of,
                Integer::longValue,
                n -> Math.toIntExact(n),
                possible.low(),
                possible.high(),
                possible.high());
    }

    private Figure<Temperature> temperature(
            RunField field, Function<Run, @Nullable Temperature> of, Range<Temperature> possible) {
        return new Figure<>(
                field,
                text -> TypedFigure.read(text, units.temperature()),
                temperature -> AsTyped.figure(units.temperature(), temperature),
                of,
                Temperature::millikelvin,
                Temperature::new,
                possible.low().millikelvin(),
                possible.high().millikelvin(),
                8_000);
    }

    private static Figure<RunningTime> time(RunField field, Function<Run, @Nullable RunningTime> of) {
        long day = 24L * 3_600_000;
        return new Figure<>(
                field, TypedTime::read, AsTyped::time, of, RunningTime::millis, RunningTime::new, 0, day, day);
    }
}
