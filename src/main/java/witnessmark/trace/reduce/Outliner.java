package witnessmark.trace.reduce;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.Layout;
import witnessmark.trace.SampleSink;
import witnessmark.trace.result.Outline;

/**
 * Makes the outline of a trace while it is read. Memory does not grow with it: when a part has outgrown its pieces, two are
 * laid together and each is twice as long from then on, so that no extreme is lost.
 */
public final class Outliner implements SampleSink {
    /** More than a chart is wide. */
    static final int PIECES = 1024;

    private static final long FIRST_STEP = 50_000;

    private final List<Outline.Speed> parts = new ArrayList<>();
    private double[] least = new double[0];
    private double[] most = new double[0];
    private int speed = -1;
    private long step = FIRST_STEP;
    private int filled;
    private final double[] low = new double[PIECES];
    private final double[] high = new double[PIECES];

    @Override
    public void begin(Layout layout) {
        speed = layout.column(ChannelKind.ENGINE_SPEED);
        least = new double[layout.columns().size()];
        most = new double[layout.columns().size()];
        Arrays.fill(least, Double.NaN);
        Arrays.fill(most, Double.NaN);
        anew();
    }

    private void anew() {
        step = FIRST_STEP;
        filled = 0;
        Arrays.fill(low, Double.NaN);
        Arrays.fill(high, Double.NaN);
    }

    @Override
    public void sample(long micros, double[] values) {
        for (int i = 0; i < least.length; i++) {
            double value = values[i];
            if (value < least[i] || Double.isNaN(least[i])) {
                least[i] = value;
            }
            if (value > most[i] || Double.isNaN(most[i])) {
                most[i] = value;
            }
        }
        if (speed >= 0) {
            put(micros, values[speed]);
        }
    }

    private void put(long micros, double rpm) {
        while (micros / step >= PIECES) {
            layTogether();
        }
        int piece = (int) (micros / step);
        filled = Math.max(filled, piece + 1);
        low[piece] = less(low[piece], rpm);
        high[piece] = more(high[piece], rpm);
    }

    private void layTogether() {
        for (int i = 0; i < PIECES / 2; i++) {
            low[i] = less(low[2 * i], low[2 * i + 1]);
            high[i] = more(high[2 * i], high[2 * i + 1]);
        }
        Arrays.fill(low, PIECES / 2, PIECES, Double.NaN);
        Arrays.fill(high, PIECES / 2, PIECES, Double.NaN);
        filled = (filled + 1) / 2;
        step *= 2;
    }

    private static double less(double one, double other) {
        return Double.isNaN(one) || other < one ? other : one;
    }

    private static double more(double one, double other) {
        return Double.isNaN(one) || other > one ? other : one;
    }

    @Override
    public void part() {
        close();
        anew();
    }

    @Override
    public void end() {
        close();
    }

    private void close() {
        parts.add(new Outline.Speed(step, boxed(low), boxed(high)));
    }

    private List<Double> boxed(double[] pieces) {
        return DoubleStream.of(pieces).limit(filled).boxed().toList();
    }

    /** What was found, once all was read. */
    public Outline outline() {
        return new Outline(
                IntStream.range(0, least.length)
                        .mapToObj(i -> new Outline.Range(least[i], most[i]))
                        .toList(),
                parts);
    }
}
