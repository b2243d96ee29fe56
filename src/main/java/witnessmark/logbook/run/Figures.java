package witnessmark.logbook.run;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Run;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedTime;

/**
 * The measured fields of the sheet. The bounds are those within which a four-stroke racing engine can read at all
 * (common practice, no source); what is usual for one engine comes from its own runs.
 */
final class Figures {
    final Figure<EngineSpeed> highest = new Figure<>(
            RunField.HIGHEST,
            TypedFigure::engineSpeed,
            speed -> Integer.toString(speed.rpm()),
            Run::highest,
            speed -> (long) speed.rpm(),
            rpm -> new EngineSpeed(Math.toIntExact(rpm)),
            500,
            20_000,
            150);
    final Figure<Integer> laps = count(RunField.LAPS, Run::laps, 400);
    final Figure<Integer> overRevs = count(RunField.OVER_REVS, Run::overRevs, 200);
    final Figure<Integer> heatCycles = count(RunField.HEAT_CYCLES, Run::heatCycles, 20);
    final Figure<Integer> raceStarts = count(RunField.RACE_STARTS, Run::raceStarts, 20);
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
        this.water = temperature(RunField.WATER, Run::waterHighest, 273_150, 413_150);
        this.oil = temperature(RunField.OIL, Run::oilHighest, 273_150, 453_150);
        this.ambient = temperature(RunField.AMBIENT, Run::ambient, 243_150, 328_150);
        this.oilPressure = new Figure<>(
                RunField.OIL_PRESSURE,
                text -> TypedFigure.read(text, units.pressure()),
                pressure -> AsTyped.figure(units.pressure(), pressure),
                Run::oilPressure,
                Pressure::pascals,
                Pressure::new,
                0,
                10_000_000,
                20_000);
        this.oilAdded = new Figure<>(
                RunField.OIL_ADDED,
                text -> TypedFigure.read(text, units.volume()),
                volume -> AsTyped.figure(units.volume(), volume),
                Run::oilAdded,
                Volume::microlitres,
                Volume::new,
                0,
                10_000_000,
                200_000);
        this.distance = new Figure<>(
                RunField.DISTANCE,
                text -> TypedFigure.read(text, units.distance()),
                distance -> AsTyped.figure(units.distance(), distance),
                Run::distance,
                Distance::metres,
                Distance::new,
                0,
                2_000_000,
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

    private static Figure<Integer> count(RunField field, Function<Run, @Nullable Integer> of, long most) {
        return new Figure<>(
                field,
                TypedFigure::count,
                count -> Integer.toString(count),
                of,
                Integer::longValue,
                n -> Math.toIntExact(n),
                0,
                most,
                most);
    }

    private Figure<Temperature> temperature(
            RunField field, Function<Run, @Nullable Temperature> of, long lowest, long highest) {
        return new Figure<>(
                field,
                text -> TypedFigure.read(text, units.temperature()),
                temperature -> AsTyped.figure(units.temperature(), temperature),
                of,
                Temperature::millikelvin,
                Temperature::new,
                lowest,
                highest,
                8_000);
    }

    private static Figure<RunningTime> time(RunField field, Function<Run, @Nullable RunningTime> of) {
        long day = 24L * 3_600_000;
        return new Figure<>(
                field, TypedTime::read, AsTyped::time, of, RunningTime::millis, RunningTime::new, 0, day, day);
    }
}
