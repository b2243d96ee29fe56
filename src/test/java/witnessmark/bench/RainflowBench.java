package witnessmark.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import witnessmark.mechanics.Rainflow;

/**
 * How many values a second are counted: a temperature that drifts and jitters as a logger writes it, and noise in which
 * every other value turns back, the worst there is.
 *
 * <p>{@code java -cp CLASSPATH witnessmark.bench.RainflowBench}
 */
public final class RainflowBench {
    private static final int VALUES = 20_000_000;
    private static final int ROUNDS = 7;
    private static final int PIECE = 4096;

    private RainflowBench() {}

    public static void main(String[] args) {
        Random random = new Random(1049);
        double[] trace = new double[VALUES];
        double[] noise = new double[VALUES];
        for (int i = 0; i < VALUES; i++) {
            trace[i] = Math.rint(10 * (85 + 20 * Math.sin(i / 9000.0) + 3 * Math.sin(i / 310.0))) / 10;
            noise[i] = random.nextInt(4096);
        }
        measure("logged temperature", trace);
        measure("noise", noise);
    }

    private static void measure(String name, double[] values) {
        double[] seconds = new double[ROUNDS];
        double[] sum = new double[1];
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            Rainflow rainflow = new Rainflow((range, mean, count) -> sum[0] += count * range);
            for (int at = 0; at < values.length; at += PIECE) {
                rainflow.add(values, at, Math.min(values.length, at + PIECE));
            }
            rainflow.finish();
            seconds[round] = (System.nanoTime() - start) / 1e9;
        }
        Arrays.sort(seconds);
        System.out.printf(
                Locale.ROOT,
                "%s: %.0f million values a second, median of %d (sum of ranges %.0f)%n",
                name,
                values.length / seconds[ROUNDS / 2] / 1e6,
                ROUNDS,
                sum[0]);
    }
}
