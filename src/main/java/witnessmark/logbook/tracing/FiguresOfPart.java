package witnessmark.logbook.tracing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.SpeedFound;

/** What a part of a trace says of a run, in the types of a run; what it does not log is missing. */
final class FiguresOfPart {
    /** A clock that was never set stands near the year its maker began to count. */
    private static final int CLOCK_SET_FROM = 2005;

    private final Map<TraceField, Object> figures = new EnumMap<>(TraceField.class);
    private final Reduction part;

    private FiguresOfPart(Reduction part) {
        this.part = part;
    }

    /**
     * @param onDyno whether sweeps at full load are counted
     * @param begins the first sample of this part by the file's clock, or null
     * @param armed whether the engine was cold since its last heat cycle
     */
    static Map<TraceField, Object> of(
            Reduction part, boolean onDyno, @Nullable LocalDateTime begins, ZoneId zone, boolean armed) {
        FiguresOfPart all = new FiguresOfPart(part);
        if (begins != null && isSet(begins)) {
            all.put(TraceField.START, Moment.of(begins, zone));
        }
        all.speeds(onDyno);
        all.put(TraceField.HEAT_CYCLES, part.heat() == null ? null : part.heat().cycles(armed));
        all.put(TraceField.DISTANCE, part.metres() == null ? null : new Distance(Math.round(part.metres())));
        all.highest(TraceField.WATER, ChannelKind.WATER_TEMPERATURE);
        all.highest(TraceField.OIL_TEMPERATURE, ChannelKind.OIL_TEMPERATURE);
        all.put(TraceField.OIL_PRESSURE, map(part.oilAtSpeed(), bar -> Pressure.ofBar(rounded(bar, 2))));
        return all.figures;
    }

    /** Whether a file's clock was set. */
    static boolean isSet(LocalDateTime begins) {
        return begins.getYear() >= CLOCK_SET_FROM;
    }

    private void speeds(boolean onDyno) {
        SpeedFound speed = part.speed();
        if (speed == null) {
            return;
        }
        put(TraceField.RUNNING, speed.running() == 0 ? null : new RunningTime(speed.running()));
        put(TraceField.LOADED, new RunningTime(speed.loaded()));
        put(TraceField.HIGH_SPEED, map(speed.high(), RunningTime::new));
        put(TraceField.HIGHEST, map(speed.extremes().highest(), rpm -> new EngineSpeed((int) Math.round(rpm))));
        put(TraceField.OVER_REVS, part.overRevs() == null ? null : Math.toIntExact(part.overRevCount()));
        put(TraceField.PULLS, onDyno ? part.pulls().size() : null);
    }

    private void highest(TraceField field, ChannelKind kind) {
        Double highest = part.extremes(kind).map(Extremes::highest).orElse(null);
        put(field, map(highest, celsius -> Temperature.ofCelsius(rounded(celsius, 1))));
    }

    private void put(TraceField field, @Nullable Object figure) {
        if (figure != null) {
            figures.put(field, figure);
        }
    }

    private static BigDecimal rounded(double figure, int decimals) {
        return BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static <T, R> @Nullable R map(@Nullable T value, Function<T, R> to) {
        return value == null ? null : to.apply(value);
    }
}
