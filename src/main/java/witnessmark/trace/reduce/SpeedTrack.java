package witnessmark.trace.reduce;

import org.jspecify.annotations.Nullable;
import witnessmark.trace.DefectLog;
import witnessmark.trace.reduce.SpeedSample.Link;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/**
 * Leaves out speeds that cannot be, and says how those left hang together. A sample is judged when the next is known, a
 * speed of nothing when it is known whether the engine stopped.
 */
final class SpeedTrack {
    private final SpeedSample.Use use;
    private final DefectLog defects;
    private final String heading;
    private final int part;
    private final double running;
    private final double loaded;
    private final double atRest;
    private final long cranking;
    private final double rise;
    private final double rate;
    private final long hole;
    private final long bridged;

    private @Nullable SpeedSample candidate;
    private @Nullable SpeedSample last;
    private @Nullable SpeedSample judged;
    private @Nullable SpeedSample firstZero;
    private @Nullable SpeedSample lastZero;
    private long zeros;
    private boolean starts;
    private boolean skipped;

    SpeedTrack(TraceSettings settings, long step, String heading, int part, DefectLog defects, SpeedSample.Use use) {
        this.use = use;
        this.defects = defects;
        this.heading = heading;
        this.part = part;
        this.running = settings.get(TraceSetting.RUNNING_FROM);
        this.loaded = settings.get(TraceSetting.LOADED_FROM);
        this.atRest = settings.get(TraceSetting.AT_REST_BELOW);
        this.cranking = settings.micros(TraceSetting.CRANKING);
        this.rise = settings.get(TraceSetting.SPIKE_RISE);
        this.rate = settings.get(TraceSetting.SPIKE_RATE);
        this.bridged = settings.micros(TraceSetting.GAP_BRIDGED);
        this.hole = step == 0 ? bridged : Math.round(step * settings.get(TraceSetting.GAP_STEPS));
    }

    /** A sample that was left out elsewhere: the hole it makes is known already. */
    void skip() {
        skipped = true;
    }

    void sample(SpeedSample sample, boolean possible, long row) {
        if (!possible) {
            leaveOut(DefectKind.SPIKE, sample, row);
            return;
        }
        if (sample.micros() <= cranking && starts && sample.rpm() > loaded) {
            leaveOut(DefectKind.CRANKING, sample, row);
            return;
        }
        SpeedSample before = candidate;
        candidate = sample;
        if (before == null) {
            starts = sample.rpm() < atRest;
        } else if (judged == null && noiseAtFirst(before, sample)) {
            starts = true;
            leaveOut(DefectKind.CRANKING, before, row - 1);
        } else if (judged != null && spike(judged, before, sample)) {
            leaveOut(DefectKind.SPIKE, before, row - 1);
        } else {
            judge(before);
        }
    }

    private boolean noiseAtFirst(SpeedSample first, SpeedSample next) {
        return first.rpm() > loaded && next.rpm() < atRest && far(first, next);
    }

    private boolean spike(SpeedSample before, SpeedSample one, SpeedSample after) {
        boolean thereAndBack = (one.rpm() > before.rpm()) == (one.rpm() > after.rpm());
        return thereAndBack && far(before, one) && far(one, after);
    }

    private boolean far(SpeedSample one, SpeedSample next) {
        double change = Math.abs(next.rpm() - one.rpm());
        return change > rise && change * 1e6 > rate * (next.micros() - one.micros());
    }

    private void leaveOut(DefectKind kind, SpeedSample sample, long row) {
        defects.sample(kind, heading, part, sample.micros(), row);
        skipped = true;
    }

    /** Speed gone to nothing from running may be a wire; it is the engine if it stays there. */
    private void judge(SpeedSample sample) {
        judged = sample;
        boolean pending = firstZero != null;
        if (sample.rpm() == 0 && (pending || (last != null && last.rpm() >= running))) {
            firstZero = pending ? firstZero : sample;
            lastZero = sample;
            zeros++;
            if (last != null && sample.micros() - last.micros() > bridged) {
                stopped();
            }
            return;
        }
        if (pending) {
            back(sample);
        }
        accept(sample);
    }

    private void back(SpeedSample sample) {
        boolean wire = sample.rpm() >= running && last != null && sample.micros() - last.micros() <= bridged;
        if (wire && firstZero != null) {
            defects.whole(new Defect(DefectKind.DROPOUT, heading, part, firstZero.micros(), sample.micros(), zeros));
            skipped = true;
            forgetZeros();
        } else {
            stopped();
        }
    }

    private void stopped() {
        SpeedSample first = firstZero;
        SpeedSample end = lastZero;
        forgetZeros();
        if (first != null && end != null) {
            accept(first);
            if (end.micros() > first.micros()) {
                accept(end);
            }
        }
    }

    private void forgetZeros() {
        firstZero = null;
        lastZero = null;
        zeros = 0;
    }

    private void accept(SpeedSample sample) {
        use.sample(sample, link(sample));
        last = sample;
        skipped = false;
    }

    private Link link(SpeedSample sample) {
        SpeedSample before = last;
        if (before == null) {
            return Link.NONE;
        }
        long apart = sample.micros() - before.micros();
        boolean rest = before.rpm() == 0 && sample.rpm() == 0; // zeros in between were taken together
        if (apart <= hole || rest) {
            return Link.NEXT;
        }
        if (!skipped) {
            defects.whole(new Defect(DefectKind.GAP, heading, part, before.micros(), sample.micros(), 0));
        }
        boolean ran = before.rpm() >= running && sample.rpm() >= running;
        return ran && apart <= bridged ? Link.BRIDGED : Link.NONE;
    }

    void end() {
        if (candidate != null) {
            SpeedSample newest = candidate;
            candidate = null;
            judge(newest);
        }
        stopped();
    }
}
