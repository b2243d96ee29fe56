package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.LoggerFigures;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.TimeUnit;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedTime;
import witnessmark.trace.result.TraceSetting;

/**
 * What the figures of traces of engines of a design are worked out with; a field left empty stays as it was written
 * before, and what nobody ever wrote is taken as usual.
 */
public final class WriteLoggerFigures implements LogSheet {
    public static final SheetField OF = choice("trace_of", 2);
    public static final SheetField RUNNING = of("running_above", FieldKind.SPEED);
    public static final SheetField LOADED = of("loaded_above", FieldKind.SPEED);
    public static final SheetField HIGH_SPEED = of("high_speed_above", FieldKind.SPEED);
    public static final SheetField OIL_FLOOR = of("oil_floor", FieldKind.PRESSURE);
    public static final SheetField OIL_FROM = of("oil_floor_from", FieldKind.SPEED);
    public static final SheetField COLD = of("cold_below", FieldKind.TEMPERATURE);
    public static final SheetField HOT = of("hot_above", FieldKind.TEMPERATURE);
    public static final SheetField HOT_FOR = of("hot_for", FieldKind.TEXT);
    public static final SheetField SOURCE = text("source", 2);

    @Override
    public String key() {
        return "write_logger_figures";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("trace_design", List.of(OF)),
                SheetGroup.of("trace_speeds", List.of(RUNNING, LOADED, HIGH_SPEED)),
                SheetGroup.of("trace_oil", List.of(OIL_FLOOR, OIL_FROM)),
                SheetGroup.of("trace_heat", List.of(COLD, HOT, HOT_FOR)),
                SheetGroup.of("speed_source", List.of(SOURCE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<EngineDesign>> designs = sight.facts().of(EngineDesign.class).where(design -> true);
        Map<SheetField, String> out = new HashMap<>();
        out.put(OF, designs.size() == 1 ? designs.get(0).id().text() : "");
        if (designs.size() == 1) {
            before(sight, designs.get(0))
                    .flatMap(old -> written(old.fact(), sight))
                    .ifPresent(out::putAll);
        }
        return out;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(OF) ? sight.all(EngineDesign.class, design -> true) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<EngineDesign> design = in.chosen(OF, EngineDesign.class);
        Optional<Entry<LoggerFigures>> before = design == null ? Optional.empty() : before(in.sight(), design);
        before.ifPresent(old -> in.note(OF, SheetNote.of("fastener_before")));
        LoggerFigures old = before.map(Entry::fact).orElse(null);
        EngineSpeed running = ReadValues.orBefore(speed(in, RUNNING), old, LoggerFigures::runningAbove);
        EngineSpeed loaded = ReadValues.orBefore(speed(in, LOADED), old, LoggerFigures::loadedAbove);
        EngineSpeed high = ReadValues.orBefore(speed(in, HIGH_SPEED), old, LoggerFigures::highSpeedAbove);
        Pressure floor = ReadValues.orBefore(pressure(in), old, LoggerFigures::oilFloor);
        EngineSpeed from = ReadValues.orBefore(speed(in, OIL_FROM), old, LoggerFigures::oilFloorFrom);
        Temperature cold =
                ReadValues.orBefore(heat(in, COLD, TraceSetting.HEAT_ARMED_BELOW), old, LoggerFigures::coldBelow);
        Temperature hot =
                ReadValues.orBefore(heat(in, HOT, TraceSetting.HEAT_COUNTED_ABOVE), old, LoggerFigures::hotAbove);
        RunningTime hotFor = ReadValues.orBefore(time(in), old, LoggerFigures::hotFor);
        together(in, running, loaded, cold, hot);
        String source = in.text(SOURCE).isEmpty() && old != null ? old.source() : in.needed(SOURCE);
        in.note(SOURCE, SheetNote.of("source_example"));
        if (in.fine() && design != null) {
            LoggerFigures now =
                    new LoggerFigures(design.id(), running, loaded, high, floor, from, cold, hot, hotFor, source);
            before.ifPresentOrElse(entry -> in.change(OF, entry, now), () -> in.make(OF, now));
        }
    }

    /** An engine under load runs, and cold lies below warm; also where one of the two is taken as usual. */
    private static void together(
            ReadSheet in,
            @Nullable EngineSpeed running,
            @Nullable EngineSpeed loaded,
            @Nullable Temperature cold,
            @Nullable Temperature hot) {
        EngineSpeed runs = running == null ? usual(TraceSetting.RUNNING_FROM) : running;
        EngineSpeed loads = loaded == null ? usual(TraceSetting.LOADED_FROM) : loaded;
        if (loads.compareTo(runs) < 0) {
            in.wrong(LOADED, ProblemKind.OUT_OF_RANGE, LOADED, loads, runs, most(TraceSetting.LOADED_FROM));
        }
        Temperature below = cold == null ? celsius(TraceSetting.HEAT_ARMED_BELOW.usual()) : cold;
        Temperature above = hot == null ? celsius(TraceSetting.HEAT_COUNTED_ABOVE.usual()) : hot;
        if (above.compareTo(below) <= 0) {
            in.wrong(HOT, ProblemKind.OUT_OF_RANGE, HOT, above, below, celsius(TraceSetting.HEAT_COUNTED_ABOVE.most()));
        }
    }

    private static Optional<Entry<LoggerFigures>> before(SheetSight sight, Entry<EngineDesign> design) {
        return sight
                .facts()
                .of(LoggerFigures.class)
                .where(figures -> figures.design().equals(design.id()))
                .stream()
                .reduce((one, other) -> other);
    }

    private static @Nullable EngineSpeed speed(ReadSheet in, SheetField field) {
        return new ReadValues(in).speed(field);
    }

    private static @Nullable Pressure pressure(ReadSheet in) {
        Pressure pressure = new ReadValues(in).pressure(OIL_FLOOR);
        Pressure least = bar(TraceSetting.OIL_FLOOR.least());
        Pressure most = bar(TraceSetting.OIL_FLOOR.most());
        if (pressure == null) {
            in.note(OIL_FLOOR, SheetNote.of("oil_floor"));
        } else if (pressure.compareTo(least) <= 0 || pressure.compareTo(most) > 0) {
            in.wrong(OIL_FLOOR, ProblemKind.OUT_OF_RANGE, OIL_FLOOR, pressure, least, most);
            return null;
        }
        return pressure;
    }

    private static @Nullable Temperature heat(ReadSheet in, SheetField field, TraceSetting setting) {
        Temperature heat = new ReadValues(in)
                .<Temperature>echoed(
                        field, text -> TypedFigure.read(text, in.sight().units().temperature()));
        Temperature least = celsius(setting.least());
        Temperature most = celsius(setting.most());
        if (heat != null && (heat.compareTo(least) < 0 || heat.compareTo(most) > 0)) {
            in.wrong(field, ProblemKind.OUT_OF_RANGE, field, heat, least, most);
            return null;
        }
        return heat;
    }

    private static @Nullable RunningTime time(ReadSheet in) {
        RunningTime time = new ReadValues(in).echoed(HOT_FOR, text -> TypedTime.read(text, TimeUnit.SECOND));
        RunningTime most = new RunningTime(Math.round(TraceSetting.HEAT_COUNTED_FOR.most() * 1_000));
        if (time == null) {
            in.note(HOT_FOR, SheetNote.of("hot_for"));
        } else if (time.compareTo(most) > 0) {
            in.wrong(HOT_FOR, ProblemKind.OUT_OF_RANGE, HOT_FOR, time, RunningTime.NONE, most);
            return null;
        }
        return time;
    }

    private static EngineSpeed usual(TraceSetting setting) {
        return new EngineSpeed((int) setting.usual());
    }

    private static EngineSpeed most(TraceSetting setting) {
        return new EngineSpeed((int) setting.most());
    }

    private static Pressure bar(double figure) {
        return Pressure.ofBar(BigDecimal.valueOf(figure));
    }

    private static Temperature celsius(double figure) {
        return Temperature.ofCelsius(BigDecimal.valueOf(figure));
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof LoggerFigures figures)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(OF, figures.design().text());
        out.put(RUNNING, rpm(figures.runningAbove()));
        out.put(LOADED, rpm(figures.loadedAbove()));
        out.put(HIGH_SPEED, rpm(figures.highSpeedAbove()));
        out.put(OIL_FLOOR, AsText.figure(sight.units().pressure(), figures.oilFloor()));
        out.put(OIL_FROM, rpm(figures.oilFloorFrom()));
        out.put(COLD, AsText.figure(sight.units().temperature(), figures.coldBelow()));
        out.put(HOT, AsText.figure(sight.units().temperature(), figures.hotAbove()));
        out.put(HOT_FOR, AsText.seconds(figures.hotFor()));
        out.put(SOURCE, figures.source());
        return Optional.of(out);
    }

    private static String rpm(@Nullable EngineSpeed speed) {
        return speed == null ? "" : Integer.toString(speed.rpm());
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(EngineDesign.class, typed.text(OF))
                .map(design -> design.fact().name())
                .orElse(""));
    }
}
