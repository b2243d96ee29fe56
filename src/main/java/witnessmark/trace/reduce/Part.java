package witnessmark.trace.reduce;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.DefectLog;
import witnessmark.trace.Layout;
import witnessmark.trace.reduce.SpeedSample.Link;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.PressureDip;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.SpeedFound;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** One part of a trace: hands each figure to what is made of it. */
final class Part {
    /** A figure of another channel holds for this long, or for three of its steps. */
    private static final long HOLDS = 1_000_000;

    private static final int ALL_AT_ONCE = 3;
    /** How far throttle, in %, or car speed, in km/h, moves while engine speed stands still if that is frozen. */
    private static final double THROTTLE_MOVED = 25;

    private static final double SPEED_MOVED = 1500;

    private final Layout layout;
    private final Now now;
    private final DefectLog defects;
    private final int number;
    private final boolean limited;

    private final @Nullable SpeedTrack track;
    private final SpeedTotals totals;
    private final OverRevs overRevs;
    private final Pulls pulls;
    private final Frozen frozenSpeed;
    private final Frozen frozenOil;
    private final @Nullable OilPressure oil;
    private final @Nullable Warmth waterWarmth;
    private final @Nullable Warmth oilWarmth;
    private final Water water;
    private final Driven driven;
    private final RestOffset offset;
    private final Set<ChannelKind> logged = EnumSet.noneOf(ChannelKind.class);

    private long rows;
    private long last;

    Part(TraceSettings settings, Layout layout, int number, DefectLog defects) {
        this.layout = layout;
        this.number = number;
        this.defects = defects;
        this.now = new Now(layout, HOLDS);
        this.limited = settings.has(TraceSetting.OVER_REV_ABOVE);
        this.totals = new SpeedTotals(settings);
        long speedStep = now.step(ChannelKind.ENGINE_SPEED);
        this.overRevs = new OverRevs(settings, speedStep);
        this.pulls = new Pulls(settings);
        long frozen = settings.micros(TraceSetting.FROZEN);
        this.frozenSpeed =
                new Frozen(frozen, THROTTLE_MOVED, now.heading(ChannelKind.ENGINE_SPEED), number, defects);
        this.frozenOil = new Frozen(frozen, SPEED_MOVED, now.heading(ChannelKind.OIL_PRESSURE), number, defects);
        this.track = now.has(ChannelKind.ENGINE_SPEED)
                ? new SpeedTrack(
                        settings,
                        speedStep,
                        now.heading(ChannelKind.ENGINE_SPEED),
                        number,
                        defects,
                        this::speed)
                : null;
        this.oil = now.has(ChannelKind.OIL_PRESSURE)
                ? new OilPressure(
                        settings,
                        now.step(ChannelKind.OIL_PRESSURE),
                        now.heading(ChannelKind.OIL_PRESSURE),
                        number,
                        defects)
                : null;
        this.waterWarmth = warmth(settings, ChannelKind.WATER_TEMPERATURE, TraceSetting.WATER_LIMIT);
        this.oilWarmth = warmth(settings, ChannelKind.OIL_TEMPERATURE, TraceSetting.OIL_LIMIT);
        this.water = new Water(settings);
        this.driven = new Driven(settings);
        this.offset = new RestOffset(settings);
    }

    private @Nullable Warmth warmth(TraceSettings settings, ChannelKind kind, TraceSetting limit) {
        return now.has(kind)
                ? new Warmth(settings, limit, now.step(kind), now.heading(kind), number, defects)
                : null;
    }

    void sample(long micros, double[] values) {
        rows++;
        last = micros;
        if (nothingAtAll(values)) {
            defects.sample(DefectKind.DROPOUT, "", number, micros, rows);
            if (track != null) {
                track.skip();
            }
            return;
        }
        now.take(micros, values);
        for (ChannelKind kind : now.kinds()) {
            if (!now.isFresh(kind)) {
                continue;
            }
            if (kind.possible(now.newest(kind))) {
                logged.add(kind);
                now.keep(kind);
            } else if (kind != ChannelKind.ENGINE_SPEED) {
                defects.sample(DefectKind.SPIKE, now.heading(kind), number, micros, rows);
            }
        }
        hand(micros);
    }

    /** Every figure of a row is exactly nothing: the logger lost its channels. */
    private boolean nothingAtAll(double[] values) {
        int zeros = 0;
        for (int i = 0; i < values.length; i++) {
            if (Double.isNaN(values[i]) || layout.columns().get(i).kind() == ChannelKind.LAP) {
                continue;
            }
            if (values[i] != 0) {
                return false;
            }
            zeros++;
        }
        // At rest speed, throttle and pressures are nothing too, but never a temperature or the battery.
        boolean neverNothing = now.has(ChannelKind.WATER_TEMPERATURE)
                || now.has(ChannelKind.OIL_TEMPERATURE)
                || now.has(ChannelKind.BATTERY);
        return zeros >= ALL_AT_ONCE && neverNothing;
    }

    private void hand(long micros) {
        if (track != null && now.isFresh(ChannelKind.ENGINE_SPEED)) {
            double rpm = now.newest(ChannelKind.ENGINE_SPEED);
            track.sample(
                    new SpeedSample(micros, rpm, now.held(ChannelKind.THROTTLE), now.held(ChannelKind.GEAR)),
                    ChannelKind.ENGINE_SPEED.possible(rpm),
                    rows);
        }
        double speed = now.held(ChannelKind.ENGINE_SPEED);
        if (oil != null && now.usable(ChannelKind.OIL_PRESSURE)) {
            double bar = now.newest(ChannelKind.OIL_PRESSURE);
            oil.sample(micros, bar, speed, now.held(ChannelKind.LATERAL));
            frozenOil.sample(micros, bar, speed, true, (value, time) -> {});
            offset.sample(bar, speed);
        }
        water.speed(speed);
        if (waterWarmth != null && now.usable(ChannelKind.WATER_TEMPERATURE)) {
            waterWarmth.sample(micros, now.newest(ChannelKind.WATER_TEMPERATURE), rows, water);
        }
        if (oilWarmth != null && now.usable(ChannelKind.OIL_TEMPERATURE)) {
            oilWarmth.sample(micros, now.newest(ChannelKind.OIL_TEMPERATURE), rows, (at, celsius) -> {});
        }
        if (now.usable(ChannelKind.CAR_SPEED)) {
            driven.speed(micros, now.newest(ChannelKind.CAR_SPEED));
        }
        if (now.usable(ChannelKind.LAP)) {
            driven.lap(now.newest(ChannelKind.LAP));
        }
        pulls.now(now.held(ChannelKind.TORQUE), now.held(ChannelKind.POWER));
    }

    private void speed(SpeedSample sample, Link link) {
        totals.sample(sample, link);
        if (limited) {
            overRevs.sample(sample, link);
        }
        pulls.sample(sample, link);
        double other = Double.isNaN(sample.throttle()) ? now.held(ChannelKind.CAR_SPEED) : sample.throttle();
        frozenSpeed.sample(sample.micros(), sample.rpm(), other, link == Link.NEXT, totals::takeBack);
    }

    Reduction found() {
        if (track != null) {
            track.end();
        }
        frozenSpeed.end(totals::takeBack);
        frozenOil.end((value, time) -> {});
        overRevs.end();
        pulls.end();
        water.end();
        if (oil != null) {
            oil.end();
        }
        boolean turned = logged.contains(ChannelKind.ENGINE_SPEED);
        boolean pressed = oil != null && turned && logged.contains(ChannelKind.OIL_PRESSURE);
        boolean warm = logged.contains(ChannelKind.WATER_TEMPERATURE);
        SpeedFound speed = turned ? totals.found() : null;
        List<Excursion> excursions = turned && limited ? overRevs.found() : null;
        List<PressureDip> dips = pressed && oil != null ? oil.dips() : null;
        return new Reduction(
                last,
                rows,
                logged,
                speed,
                excursions,
                overRevs.count(),
                dips,
                oil == null ? 0 : oil.dipCount(),
                pressed && oil != null ? oil.lowestAtSpeed() : null,
                offset.found(defects, now.heading(ChannelKind.OIL_PRESSURE), number),
                pressed && oil != null ? oil.trend() : null,
                extremes(),
                warm ? water.heat() : null,
                warm ? water.turns() : null,
                new ArrayList<>(water.falls()),
                logged.contains(ChannelKind.CAR_SPEED) ? driven.metres() : null,
                logged.contains(ChannelKind.LAP) ? driven.laps() : null,
                pulls.found());
    }

    private Map<ChannelKind, Extremes> extremes() {
        Map<ChannelKind, Extremes> extremes = new EnumMap<>(ChannelKind.class);
        if (oil != null && logged.contains(ChannelKind.OIL_PRESSURE)) {
            extremes.put(ChannelKind.OIL_PRESSURE, oil.extremes());
        }
        if (waterWarmth != null && logged.contains(ChannelKind.WATER_TEMPERATURE)) {
            extremes.put(ChannelKind.WATER_TEMPERATURE, waterWarmth.extremes());
        }
        if (oilWarmth != null && logged.contains(ChannelKind.OIL_TEMPERATURE)) {
            extremes.put(ChannelKind.OIL_TEMPERATURE, oilWarmth.extremes());
        }
        return extremes;
    }
}
