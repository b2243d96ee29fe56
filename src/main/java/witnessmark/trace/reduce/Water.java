package witnessmark.trace.reduce;

import java.util.ArrayList;
import java.util.List;
import witnessmark.trace.result.HeatCycles;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TemperatureFall;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.result.TurningPoints;

/** What water temperature says: heat cycles for both ways the engine can have been left, ranges, and falls that are none. */
final class Water implements Warmth.Use {
    private static final class Cycles {
        private boolean armed;
        private int count;
    }

    private final double armedBelow;
    private final double hotAbove;
    private final long hotFor;
    private final double fall;
    private final double running;
    private final double loaded;
    private final Turns turns;
    private final Cycles ifArmed = new Cycles();
    private final Cycles ifNot = new Cycles();
    private final List<TemperatureFall> falls = new ArrayList<>();

    private long hotSince = -1;
    private double rpm = Double.NaN;
    private double highest = Double.NEGATIVE_INFINITY;
    private boolean falling;
    private long fallFrom;
    private double fallTo;
    private long last;

    Water(TraceSettings settings) {
        this.armedBelow = settings.get(TraceSetting.HEAT_ARMED_BELOW);
        this.hotAbove = settings.get(TraceSetting.HEAT_COUNTED_ABOVE);
        this.hotFor = settings.micros(TraceSetting.HEAT_COUNTED_FOR);
        this.fall = settings.get(TraceSetting.IMPLAUSIBLE_FALL);
        this.running = settings.get(TraceSetting.RUNNING_FROM);
        this.loaded = settings.get(TraceSetting.LOADED_FROM);
        this.turns = new Turns(settings.get(TraceSetting.THERMAL_RANGE));
        ifArmed.armed = true;
    }

    /** The engine's speed, until it is said again; NaN when not known. */
    void speed(double speed) {
        rpm = speed;
    }

    @Override
    public void temperature(long micros, double celsius) {
        turns.add(celsius);
        heat(micros, celsius);
        fall(micros, celsius);
        last = micros;
    }

    private void heat(long micros, double celsius) {
        if (celsius < armedBelow) {
            ifArmed.armed = true;
            ifNot.armed = true;
        }
        if (celsius <= hotAbove) {
            hotSince = -1;
            return;
        }
        hotSince = hotSince < 0 ? micros : hotSince;
        if (micros - hotSince >= hotFor) {
            count(ifArmed);
            count(ifNot);
        }
    }

    private static void count(Cycles cycles) {
        cycles.count += cycles.armed ? 1 : 0;
        cycles.armed = false;
    }

    private void fall(long micros, double celsius) {
        if (rpm < running && !falling) {
            highest = Double.NEGATIVE_INFINITY; // a stopped engine cools
        }
        boolean cold = celsius < hotAbove && highest - celsius >= fall;
        if (!falling && cold && rpm >= loaded) {
            falling = true;
            fallFrom = micros;
            fallTo = celsius;
        } else if (falling && !cold) {
            close(micros);
        }
        if (falling) {
            fallTo = Math.min(fallTo, celsius);
        } else {
            highest = Math.max(highest, celsius);
        }
    }

    private void close(long micros) {
        falling = false;
        if (falls.size() < Reduction.MOST_LISTED) {
            falls.add(new TemperatureFall(fallFrom, micros - fallFrom, highest, fallTo));
        }
    }

    void end() {
        if (falling) {
            close(last);
        }
    }

    HeatCycles heat() {
        return new HeatCycles(ifArmed.count, ifNot.count, ifArmed.armed, ifNot.armed);
    }

    TurningPoints turns() {
        return turns.found();
    }

    List<TemperatureFall> falls() {
        return falls;
    }
}
