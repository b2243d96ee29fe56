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
    private static final int ALL_AT_ONCE = 3;
    /** How far throttle, in %, or car speed, in km/h, moves while engine speed stands still if that is frozen. */
    private static final double THROTTLE_MOVED = 25;

    private static final double SPEED_MOVED = 1500;

    private final Layout layout;
    private final List<Latest> channels = new ArrayList<>();
    /** Those of them that the trace has, which alone say anything. */
    private final Latest[] there;

    private final Latest engine;
    private final Latest throttle;
    private final Latest gear;
    private final Latest lateral;
    private final Latest carSpeed;
    private final Latest lap;
    private final Latest torque;
    private final Latest power;
    private final Latest pressure;
    private final Latest waterHeat;
    private final Latest oilHeat;
    private final boolean neverNothing;
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
    private long rows;
    private long last;

    Part(TraceSettings settings, Layout layout, int number, DefectLog defects) {
        this.layout = layout;
        this.number = number;
        this.defects = defects;
        this.engine = channel(ChannelKind.ENGINE_SPEED);
        this.throttle = channel(ChannelKind.THROTTLE);
        this.gear = channel(ChannelKind.GEAR);
        this.lateral = channel(ChannelKind.LATERAL);
        this.carSpeed = channel(ChannelKind.CAR_SPEED);
        this.lap = channel(ChannelKind.LAP);
        this.torque = channel(ChannelKind.TORQUE);
        this.power = channel(ChannelKind.POWER);
        this.pressure = channel(ChannelKind.OIL_PRESSURE);
        this.waterHeat = channel(ChannelKind.WATER_TEMPERATURE);
        this.oilHeat = channel(ChannelKind.OIL_TEMPERATURE);
        for (ChannelKind kind : ChannelKind.values()) {
            boolean known = channels.stream().anyMatch(channel -> channel.kind() == kind);
            if (!known && !kind.oftenMany() && layout.column(kind) >= 0) {
                channel(kind);
            }
        }
        this.there = channels.stream().filter(Latest::there).toArray(Latest[]::new);
        // At rest speed, throttle and pressures are nothing too, but never a temperature or the battery.
        this.neverNothing = waterHeat.there() || oilHeat.there() || layout.column(ChannelKind.BATTERY) >= 0;
        this.limited = settings.has(TraceSetting.OVER_REV_ABOVE);
        this.totals = new SpeedTotals(settings);
        this.overRevs = new OverRevs(settings, engine.step());
        this.pulls = new Pulls(settings);
        long frozen = settings.micros(TraceSetting.FROZEN);
        this.frozenSpeed = new Frozen(frozen, THROTTLE_MOVED, engine.heading(), number, defects);
        this.frozenOil = new Frozen(frozen, SPEED_MOVED, pressure.heading(), number, defects);
        this.track = engine.there()
                ? new SpeedTrack(settings, engine.step(), engine.heading(), number, defects, this::speed)
                : null;
        this.oil = pressure.there()
                ? new OilPressure(settings, pressure.step(), pressure.heading(), number, defects)
                : null;
        this.waterWarmth = warmth(settings, waterHeat, TraceSetting.WATER_LIMIT);
        this.oilWarmth = warmth(settings, oilHeat, TraceSetting.OIL_LIMIT);
        this.water = new Water(settings);
        this.driven = new Driven(settings);
        this.offset = new RestOffset(settings);
    }

    private Latest channel(ChannelKind kind) {
        Latest channel = new Latest(layout, kind);
        channels.add(channel);
        return channel;
    }

    private @Nullable Warmth warmth(TraceSettings settings, Latest channel, TraceSetting limit) {
        return channel.there() ? new Warmth(settings, limit, channel.step(), channel.heading(), number, defects) : null;
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
        for (Latest channel : there) {
            if (channel.take(micros, values) && channel != engine) {
                defects.sample(DefectKind.SPIKE, channel.heading(), number, micros, rows);
            }
        }
        hand(micros);
    }

    /** Every figure of a row is exactly nothing: the logger lost its channels. */
    private boolean nothingAtAll(double[] values) {
        int zeros = 0;
        for (int i = 0; i < values.length; i++) {
            double value = values[i];
            if (value != 0 && !Double.isNaN(value) && layout.columns().get(i).kind() != ChannelKind.LAP) {
                return false;
            }
            zeros += value == 0 ? 1 : 0;
        }
        return zeros >= ALL_AT_ONCE && neverNothing;
    }

    private void hand(long micros) {
        if (track != null && engine.fresh()) {
            track.sample(
                    new SpeedSample(micros, engine.figure(), throttle.held(micros), gear.held(micros)),
                    engine.usable(),
                    rows);
        }
        double speed = engine.held(micros);
        if (oil != null && pressure.usable()) {
            double bar = pressure.figure();
            oil.sample(micros, bar, speed, lateral.held(micros));
            frozenOil.sample(micros, bar, speed, true, (value, time) -> {});
            offset.sample(bar, speed);
        }
        water.speed(speed);
        if (waterWarmth != null && waterHeat.usable()) {
            waterWarmth.sample(micros, waterHeat.figure(), rows, water);
        }
        if (oilWarmth != null && oilHeat.usable()) {
            oilWarmth.sample(micros, oilHeat.figure(), rows, (at, celsius) -> {});
        }
        if (carSpeed.usable()) {
            driven.speed(micros, carSpeed.figure());
        }
        if (lap.usable()) {
            driven.lap(lap.figure());
        }
        pulls.now(torque.held(micros), power.held(micros));
    }

    private void speed(SpeedSample sample, Link link) {
        totals.sample(sample, link);
        if (limited) {
            overRevs.sample(sample, link);
        }
        pulls.sample(sample, link);
        double other = Double.isNaN(sample.throttle()) ? carSpeed.held(sample.micros()) : sample.throttle();
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
        boolean turned = engine.logged();
        boolean pressed = oil != null && turned && pressure.logged();
        boolean warm = waterHeat.logged();
        Set<ChannelKind> logged = EnumSet.noneOf(ChannelKind.class);
        channels.stream().filter(Latest::logged).forEach(channel -> logged.add(channel.kind()));
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
                offset.found(defects, pressure.heading(), number),
                pressed && oil != null ? oil.trend() : null,
                extremes(),
                warm ? water.heat() : null,
                warm ? water.turns() : null,
                new ArrayList<>(water.falls()),
                carSpeed.logged() ? driven.metres() : null,
                lap.logged() ? driven.laps() : null,
                pulls.found());
    }

    private Map<ChannelKind, Extremes> extremes() {
        Map<ChannelKind, Extremes> extremes = new EnumMap<>(ChannelKind.class);
        if (oil != null && pressure.logged()) {
            extremes.put(ChannelKind.OIL_PRESSURE, oil.extremes());
        }
        if (waterWarmth != null && waterHeat.logged()) {
            extremes.put(ChannelKind.WATER_TEMPERATURE, waterWarmth.extremes());
        }
        if (oilWarmth != null && oilHeat.logged()) {
            extremes.put(ChannelKind.OIL_TEMPERATURE, oilWarmth.extremes());
        }
        return extremes;
    }
}
