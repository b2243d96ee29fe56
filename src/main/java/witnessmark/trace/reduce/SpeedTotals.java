package witnessmark.trace.reduce;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.SpeedHistogram;
import witnessmark.trace.reduce.SpeedSample.Link;
import witnessmark.trace.result.SpeedFound;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** Sums over engine speed, which goes evenly from one sample to the next. */
final class SpeedTotals implements SpeedSample.Use {
    private static final double MICROS_IN_MINUTE = 60e6;

    private final double runningFrom;
    private final double loadedFrom;
    private final double highFrom;
    private final double[] bands = new double[SpeedHistogram.mostBands()];
    private final Held held = new Held(Double.NaN);
    private double loaded;
    private double high;
    private long covered;
    private double turns;
    private @Nullable SpeedSample last;

    SpeedTotals(TraceSettings settings) {
        this.runningFrom = settings.get(TraceSetting.RUNNING_FROM);
        this.loadedFrom = settings.get(TraceSetting.LOADED_FROM);
        this.highFrom = settings.get(TraceSetting.HIGH_SPEED_FROM);
    }

    @Override
    public void sample(SpeedSample sample, Link link) {
        if (last != null && link != Link.NONE) {
            long apart = sample.micros() - last.micros();
            add(last.rpm(), sample.rpm(), apart);
            covered += link == Link.NEXT ? apart : 0;
        }
        held.add(sample.micros(), sample.rpm(), link == Link.NEXT);
        last = sample;
    }

    /** Takes back time at a speed that was none. */
    void takeBack(double rpm, long micros) {
        add(rpm, rpm, -micros);
        covered -= micros;
    }

    private void add(double one, double other, long micros) {
        turns += (one + other) / 2 * micros / MICROS_IN_MINUTE;
        loaded += Linear.shareFrom(one, other, loadedFrom) * micros;
        high += Double.isNaN(highFrom) ? 0 : Linear.shareFrom(one, other, highFrom) * micros;
        double low = Math.min(one, other);
        double top = Math.max(one, other);
        if (top < runningFrom) {
            return;
        }
        if (low == top) {
            bands[band(low)] += micros;
            return;
        }
        double bottom = Math.max(low, runningFrom);
        int first = band(bottom);
        int lastBand = band(top);
        for (int i = first; i <= lastBand; i++) {
            double from = i == first ? bottom : i * (double) SpeedHistogram.WIDTH;
            double to = i == lastBand ? top : (i + 1) * (double) SpeedHistogram.WIDTH;
            bands[i] += (to - from) / (top - low) * micros;
        }
    }

    private static int band(double rpm) {
        return Math.min((int) (rpm / SpeedHistogram.WIDTH), SpeedHistogram.mostBands() - 1);
    }

    SpeedFound found() {
        long[] millis = new long[bands.length];
        double sum = 0;
        long before = 0;
        for (int i = 0; i < bands.length; i++) {
            sum += Math.max(bands[i], 0);
            long until = Math.round(sum / 1000); // rounded sums, so that bands add up to the whole
            millis[i] = until - before;
            before = until;
        }
        return new SpeedFound(
                before,
                Math.round(loaded / 1000),
                Double.isNaN(highFrom) ? null : Math.round(high / 1000),
                Math.round(covered / 1000.0),
                turns,
                SpeedHistogram.of(millis),
                held.found());
    }
}
