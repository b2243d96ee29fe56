package witnessmark.trace.reduce;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.trace.reduce.SpeedSample.Link;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/**
 * Excursions above a limit. One goes on until speed is below the limit by the hysteresis; it counts with enough samples
 * above and enough time above; counted ones close together are one.
 */
final class OverRevs implements SpeedSample.Use {
    private final double limit;
    private final double until;
    private final double shut;
    private final long fewest;
    private final long shortest;
    private final long apart;
    private final long step;
    private final List<Excursion> found = new ArrayList<>();
    private long count;

    private @Nullable Excursion waiting;
    private long waitingEnds;

    private boolean open;
    private long at;
    private long lasted;
    private long ends;
    private long samples;
    private double peak;
    private double throttleToPeak;
    private double throttleSoFar;
    private double gear;
    private @Nullable SpeedSample last;

    OverRevs(TraceSettings settings, long step) {
        this.limit = settings.get(TraceSetting.OVER_REV_ABOVE);
        this.until = limit - settings.get(TraceSetting.OVER_REV_HYSTERESIS);
        this.shut = settings.get(TraceSetting.THROTTLE_SHUT);
        this.fewest = Math.round(settings.get(TraceSetting.OVER_REV_SAMPLES));
        this.shortest = settings.micros(TraceSetting.OVER_REV_SHORTEST);
        this.apart = settings.micros(TraceSetting.OVER_REV_APART);
        this.step = step;
    }

    @Override
    public void sample(SpeedSample sample, Link link) {
        boolean next = link == Link.NEXT;
        if (open && last != null && last.rpm() > limit) {
            ends = next ? sample.micros() : last.micros() + step;
            lasted += ends - last.micros();
        }
        if (open && (!next || sample.rpm() < until)) {
            close();
        }
        if (sample.rpm() > limit) {
            above(sample);
        } else if (open && last != null) {
            hold(last, sample);
        }
        last = sample;
    }

    private void above(SpeedSample sample) {
        if (!open) {
            open = true;
            at = sample.micros();
            lasted = 0;
            samples = 0;
            peak = Double.NEGATIVE_INFINITY;
            throttleSoFar = Double.NaN;
            throttleToPeak = sample.throttle();
            gear = sample.gear();
        } else if (last != null) {
            hold(last, sample);
        }
        throttleSoFar = more(throttleSoFar, sample.throttle());
        samples++;
    }

    /** The lower of two samples in a row was held. */
    private void hold(SpeedSample one, SpeedSample other) {
        double level = Math.min(one.rpm(), other.rpm());
        if (level > peak) {
            peak = level;
            throttleToPeak = more(throttleSoFar, other.throttle());
            gear = other.gear();
        }
    }

    private static double more(double one, double other) {
        return Double.isNaN(one) || other > one ? other : one;
    }

    private void close() {
        open = false;
        if (samples < fewest || lasted < shortest || peak == Double.NEGATIVE_INFINITY) {
            return;
        }
        Excursion one = made(at, lasted, samples, peak, throttleToPeak, gear);
        if (waiting != null && at - waitingEnds < apart) {
            Excursion higher = one.peak() > waiting.peak() ? one : waiting;
            waiting = new Excursion(
                    waiting.at(),
                    waiting.lasted() + one.lasted(),
                    waiting.samples() + one.samples(),
                    higher.peak(),
                    higher.how(),
                    higher.gear(),
                    higher.throttle());
        } else {
            keep();
            waiting = one;
        }
        waitingEnds = ends;
    }

    private Excursion made(long from, long time, long number, double high, double throttle, double in) {
        Excursion.How how = Double.isNaN(throttle)
                ? Excursion.How.NOT_KNOWN
                : throttle <= shut ? Excursion.How.MECHANICAL : Excursion.How.LIMITER;
        return new Excursion(
                from,
                time,
                number,
                high,
                how,
                Double.isNaN(in) ? null : (int) Math.round(in),
                Double.isNaN(throttle) ? null : throttle);
    }

    private void keep() {
        if (waiting != null) {
            count++;
            if (found.size() < Reduction.MOST_LISTED) {
                found.add(waiting);
            }
        }
    }

    void end() {
        if (open && last != null && last.rpm() > limit) {
            ends = last.micros() + step;
            lasted += step;
        }
        if (open) {
            close();
        }
        keep();
        waiting = null;
    }

    List<Excursion> found() {
        return found;
    }

    long count() {
        return count;
    }
}
