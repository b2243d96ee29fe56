package witnessmark.desktop.traceview;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import witnessmark.chart.Sampled;
import witnessmark.trace.result.Envelope;
import witnessmark.trace.result.Wave;

/** Kept samples as a curve to be drawn, in the unit they are shown in, shifted in time where they are of another run. */
public final class WaveCurve implements Sampled {
    private static final double SECOND = 1e6;

    private final Wave wave;
    private final DoubleUnaryOperator shown;
    private final long shift;

    /**
     * @param shown a figure of the channel as it is shown; rises with it
     * @param shift by how much it is drawn later than it was, microseconds
     */
    public WaveCurve(Wave wave, DoubleUnaryOperator shown, long shift) {
        this.wave = wave;
        this.shown = shown;
        this.shift = shift;
    }

    @Override
    public int count(double from, double until) {
        return wave.from(micros(until) + 1) - wave.from(micros(from));
    }

    @Override
    public void envelope(double from, double until, double[] least, double[] most) {
        Envelope envelope = wave.envelope(micros(from), micros(until), least.length);
        for (int i = 0; i < least.length; i++) {
            least[i] = shown.applyAsDouble(envelope.least(i));
            most[i] = shown.applyAsDouble(envelope.most(i));
        }
        if (!wave.fine()) {
            bridge(from, until, least, most);
        }
    }

    /** Where points stand for several samples and are further apart than pieces, each reaches to the next. */
    private void bridge(double from, double until, double[] least, double[] most) {
        if (count(from, until) >= 2 * least.length) {
            return;
        }
        double[] low = new double[least.length];
        double[] high = new double[least.length];
        Arrays.fill(low, Double.NaN);
        Arrays.fill(high, Double.NaN);
        double piece = (until - from) / least.length;
        for (int i = 0; i < least.length; i++) {
            double at = from + (i + 0.5) * piece;
            low[i] = Double.isNaN(least[i]) ? least(at) : least[i];
            high[i] = Double.isNaN(most[i]) ? most(at) : most[i];
        }
        System.arraycopy(low, 0, least, 0, low.length);
        System.arraycopy(high, 0, most, 0, high.length);
    }

    @Override
    public void points(double from, double until, Point told) {
        int first = Math.max(0, wave.from(micros(from)) - 1);
        int last = Math.min(wave.size() - 1, wave.from(micros(until) + 1));
        for (int i = first; i <= last; i++) {
            told.at(
                    (wave.micros(i) + shift) / SECOND,
                    shown.applyAsDouble(wave.least(i)),
                    shown.applyAsDouble(wave.most(i)),
                    i > 0 && wave.isHole(i - 1));
        }
    }

    @Override
    public double least(double at) {
        int point = wave.at(micros(at));
        return point < 0 ? Double.NaN : shown.applyAsDouble(wave.least(point));
    }

    @Override
    public double most(double at) {
        int point = wave.at(micros(at));
        return point < 0 ? Double.NaN : shown.applyAsDouble(wave.most(point));
    }

    private long micros(double seconds) {
        return Math.round(seconds * SECOND) - shift;
    }
}
