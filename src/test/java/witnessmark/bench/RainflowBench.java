package witnessmark.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.mechanics.Rainflow;
import witnessmark.trace.Layout;
import witnessmark.trace.kept.Bytes;
import witnessmark.trace.kept.KeptReader;
import witnessmark.trace.kept.KeptWriter;
import witnessmark.trace.kept.Samples;
import witnessmark.trace.look.Temperatures;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.ThermalRanges;

/**
 * How many values a second are counted: a temperature that drifts and jitters as a logger writes it, and noise in which
 * two of three values turn back, the worst there is. Both from numbers in memory, and from what was kept of a trace, where
 * unpacking is most of the work.
 *
 * <p>{@code java -Xmx2g -cp CLASSPATH witnessmark.bench.RainflowBench}
 */
public final class RainflowBench {
    private static final int VALUES = 10_000_000;
    private static final int ROUNDS = 7;
    private static final int PIECE = 4096;
    private static final long STEP = 20_000;

    private RainflowBench() {}

    public static void main(String[] args) throws IOException {
        Random random = new Random(1049);
        double[] trace = new double[VALUES];
        double[] noise = new double[VALUES];
        for (int i = 0; i < VALUES; i++) {
            trace[i] = Math.rint(10 * (85 + 20 * Math.sin(i / 9000.0) + 3 * Math.sin(i / 310.0))) / 10;
            noise[i] = random.nextInt(4096);
        }
        measure("logged temperature", trace);
        measure("noise", noise);
        measure("logged temperature, from what was kept", kept(trace));
        measure("noise, from what was kept", kept(noise));
    }

    private interface Work {
        double sum() throws IOException;
    }

    private static void measure(String name, double[] values) throws IOException {
        measure(name, () -> {
            double[] sum = new double[1];
            Rainflow rainflow = new Rainflow((range, mean, count) -> sum[0] += count * range);
            for (int at = 0; at < VALUES; at += PIECE) {
                rainflow.add(values, at, Math.min(VALUES, at + PIECE));
            }
            rainflow.finish();
            return sum[0];
        });
    }

    private static Work kept(double[] values) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        KeptWriter writer = new KeptWriter(bytes);
        ColumnForm water =
                new ColumnForm("Water Temp", ChannelKind.WATER_TEMPERATURE, ChannelUnit.CELSIUS, ColumnForm.From.FILE);
        writer.begin(new Layout(List.of(water), List.of(STEP)));
        double[] row = new double[1];
        for (int i = 0; i < values.length; i++) {
            row[0] = values[i];
            writer.sample(i * STEP, row);
        }
        writer.end();
        byte[] kept = bytes.toByteArray();
        return () -> {
            Samples samples = KeptReader.open(Bytes.of(kept)).samples(0, 0);
            return Temperatures.ranges(ChannelKind.WATER_TEMPERATURE, samples.values(), 2).bands().stream()
                    .mapToDouble(ThermalRanges.Band::count)
                    .sum();
        };
    }

    private static void measure(String name, Work work) throws IOException {
        double[] seconds = new double[ROUNDS];
        double sum = 0;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            sum = work.sum();
            seconds[round] = (System.nanoTime() - start) / 1e9;
        }
        Arrays.sort(seconds);
        System.out.printf(
                Locale.ROOT,
                "%s: %.0f million values a second, median of %d (%.0f)%n",
                name,
                VALUES / seconds[ROUNDS / 2] / 1e6,
                ROUNDS,
                sum);
    }
}
