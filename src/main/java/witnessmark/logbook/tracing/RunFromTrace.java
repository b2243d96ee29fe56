package witnessmark.logbook.tracing;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.HowKnown;
import witnessmark.domain.KnownBy;
import witnessmark.domain.Run;
import witnessmark.domain.SpeedSource;
import witnessmark.domain.StartKnown;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;

/** A run with figures of its trace in place of its own. */
final class RunFromTrace {
    private final Run run;
    private final boolean fresh;
    private final Map<TraceField, Object> figures = new EnumMap<>(TraceField.class);

    private RunFromTrace(Run run, Map<TraceField, Object> all, Set<TraceField> taken, boolean fresh) {
        this.run = run;
        this.fresh = fresh;
        all.forEach((field, figure) -> {
            if (taken.contains(field)) {
                figures.put(field, figure);
            }
        });
    }

    /** @param fresh whether the run is written with its trace, so that nothing else is known by one */
    static Run of(Run run, Map<TraceField, Object> figures, Set<TraceField> taken, boolean fresh) {
        return new RunFromTrace(run, figures, taken, fresh).made();
    }

    private Run made() {
        Moment start = or(TraceField.START, Moment.class, run.start());
        RunningTime running = or(TraceField.RUNNING, RunningTime.class, run.running());
        boolean timed = figures.containsKey(TraceField.START);
        boolean fast = figures.containsKey(TraceField.HIGHEST);
        return new Run(
                run.engine(),
                run.car(),
                run.event(),
                run.planned(),
                run.kind(),
                run.name(),
                start,
                timed ? StartKnown.TRACE : run.startKnown(),
                run.in() != null && run.in().isBefore(start) ? null : run.in(),
                run.driver(),
                running,
                knownBy(),
                run.track(),
                run.warmUp(),
                orNone(TraceField.LOADED, RunningTime.class, run.loaded()),
                orNone(TraceField.HIGH_SPEED, RunningTime.class, run.highSpeed()),
                orNone(TraceField.DISTANCE, Distance.class, run.distance()),
                run.laps(),
                run.raceStarts(),
                run.engineStarts(),
                orNone(TraceField.HEAT_CYCLES, Integer.class, run.heatCycles()),
                orNone(TraceField.PULLS, Integer.class, run.pulls()),
                orNone(TraceField.OVER_REVS, Integer.class, run.overRevs()),
                orNone(TraceField.HIGHEST, EngineSpeed.class, run.highest()),
                fast ? SpeedSource.LOGGER : run.highestFrom(),
                orNone(TraceField.WATER, Temperature.class, run.waterHighest()),
                orNone(TraceField.OIL_TEMPERATURE, Temperature.class, run.oilHighest()),
                orNone(TraceField.OIL_PRESSURE, Pressure.class, run.oilPressure()),
                run.oilAdded(),
                run.ambient(),
                run.driverAsked(),
                run.remarks(),
                run.asTyped(),
                run.queried(),
                run.perhapsSame());
    }

    /** A counter that was known as running time was stays so when running time comes of the trace. */
    private KnownBy knownBy() {
        KnownBy own = own();
        KnownBy known = own;
        if (figures.containsKey(TraceField.RUNNING)) {
            for (Counter counter : Counter.values()) {
                if (run.of(counter) != null) {
                    known = known.with(counter, own.of(counter));
                }
            }
        }
        for (TraceField field : figures.keySet()) {
            Counter counter = field.counter().orElse(null);
            known = counter == null ? known : known.with(counter, HowKnown.TRACE);
        }
        return known;
    }

    /** The sheet of a new run is filled with that it is known by its trace: what was typed over it is not. */
    private KnownBy own() {
        boolean filled = fresh && run.knownBy().of(Counter.RUNNING) == HowKnown.TRACE;
        return filled ? KnownBy.all(HowKnown.TIMED) : run.knownBy();
    }

    private <T> T or(TraceField field, Class<T> type, T own) {
        Object figure = figures.get(field);
        return figure == null ? own : type.cast(figure);
    }

    private <T> @Nullable T orNone(TraceField field, Class<T> type, @Nullable T own) {
        Object figure = figures.get(field);
        return figure == null ? own : type.cast(figure);
    }
}
