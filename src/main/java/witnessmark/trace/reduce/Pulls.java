package witnessmark.trace.reduce;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.trace.reduce.SpeedSample.Link;
import witnessmark.trace.result.Pull;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** Sweeps through the speeds: speed that rises far and long enough, with the throttle open where it is logged. */
final class Pulls implements SpeedSample.Use {
    /** Speed may waver by this much on its way up, rpm. Common practice, no source. */
    private static final double WAVER = 100;

    private final double rise;
    private final long shortest;
    private final double throttle;
    private final List<Pull> found = new ArrayList<>();
    private @Nullable SpeedSample first;
    private @Nullable SpeedSample top;
    private final Most torque = new Most();
    private final Most power = new Most();
    private double torqueNow = Double.NaN;
    private double powerNow = Double.NaN;

    private static final class Most {
        private double value = Double.NaN;
        private double at;

        void take(double figure, double rpm) {
            if (figure > value || (Double.isNaN(value) && !Double.isNaN(figure))) {
                value = figure;
                at = rpm;
            }
        }

        @Nullable
        Double found() {
            return Double.isNaN(value) ? null : value;
        }
    }

    Pulls(TraceSettings settings) {
        this.rise = settings.get(TraceSetting.PULL_RISE);
        this.shortest = settings.micros(TraceSetting.PULL_SHORTEST);
        this.throttle = settings.get(TraceSetting.PULL_THROTTLE);
    }

    /** What torque and power are, until they are said again; NaN when not logged. */
    void now(double torqueFigure, double powerFigure) {
        torqueNow = torqueFigure;
        powerNow = powerFigure;
    }

    @Override
    public void sample(SpeedSample sample, Link link) {
        boolean open = Double.isNaN(sample.throttle()) || sample.throttle() >= throttle;
        boolean falls = top != null && sample.rpm() < top.rpm() - WAVER;
        if (first == null || link != Link.NEXT || !open || falls) {
            close();
            if (open) {
                begin(sample);
            }
        } else if (top == null || sample.rpm() > top.rpm()) {
            top = sample;
        }
        if (first != null) {
            torque.take(torqueNow, sample.rpm());
            power.take(powerNow, sample.rpm());
        }
    }

    private void begin(SpeedSample sample) {
        first = sample;
        top = sample;
        torque.value = Double.NaN;
        power.value = Double.NaN;
    }

    private void close() {
        SpeedSample from = first;
        SpeedSample to = top;
        if (from != null
                && to != null
                && to.rpm() - from.rpm() >= rise
                && to.micros() - from.micros() >= shortest
                && found.size() < Reduction.MOST_LISTED) {
            found.add(new Pull(
                    from.micros(),
                    to.micros() - from.micros(),
                    from.rpm(),
                    to.rpm(),
                    torque.found(),
                    torque.at,
                    power.found(),
                    power.at));
        }
        first = null;
        top = null;
    }

    void end() {
        close();
    }

    List<Pull> found() {
        return found;
    }
}
