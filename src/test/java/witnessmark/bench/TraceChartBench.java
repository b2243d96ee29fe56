package witnessmark.bench;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import witnessmark.chart.ChartStyle;
import witnessmark.chart.DrawnTraceRows;
import witnessmark.chart.TraceRows;
import witnessmark.chart.TraceStyle;
import witnessmark.desktop.traceview.WaveCurve;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.Layout;
import witnessmark.trace.kept.Bytes;
import witnessmark.trace.kept.KeptReader;
import witnessmark.trace.kept.KeptWriter;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Wave;

/**
 * How long a channel of a million samples takes to be drawn anew, whole and looked at more closely, with axes and words;
 * and how long it takes to be read from what is kept.
 *
 * <p>{@code java -cp CLASSPATH witnessmark.bench.TraceChartBench}
 */
public final class TraceChartBench {
    private static final int SAMPLES = 1_000_000;
    private static final long STEP = 2_000;
    private static final long POINTS = 1 << 18;
    private static final int ROUNDS = 300;
    private static final int WIDE = 760;
    private static final int HIGH = 300;

    private TraceChartBench() {}

    public static void main(String[] args) throws Exception {
        KeptReader kept = kept();
        long end = (SAMPLES - 1) * STEP;
        System.out.printf(
                Locale.ROOT,
                "load %.2f%n",
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        draw("whole", kept, 0, end);
        draw("a quarter", kept, end / 3, end / 3 + end / 4);
        draw("a fiftieth", kept, end / 3, end / 3 + end / 50);
        draw("two seconds", kept, end / 3, end / 3 + 2_000_000);
    }

    private static void draw(String what, KeptReader kept, long from, long until) throws Exception {
        long[] read = new long[ROUNDS / 10];
        Wave wave = kept.wave(0, 0, from, until, POINTS);
        for (int i = 0; i < read.length; i++) {
            long start = System.nanoTime();
            wave = kept.wave(0, 0, from, until, POINTS);
            read[i] = System.nanoTime() - start;
        }
        TraceRows rows = rows(new WaveCurve(wave, rpm -> rpm, 0), (SAMPLES - 1) * STEP / 1e6);
        ChartStyle base =
                ChartStyle.onPaper(new Font("SansSerif", Font.PLAIN, 12), new Font("SansSerif", Font.BOLD, 15));
        DrawnTraceRows drawn = new DrawnTraceRows(rows, new TraceStyle(base, Color.RED, Color.PINK, Color.BLACK));
        drawn.seen().see(from / 1e6, until / 1e6);
        long[] took = new long[ROUNDS];
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < ROUNDS; i++) {
            Graphics2D g = image.createGraphics();
            long start = System.nanoTime();
            drawn.draw(g, new Rectangle2D.Double(0, 0, WIDE, HIGH), null);
            took[i] = System.nanoTime() - start;
            g.dispose();
        }
        Arrays.sort(took);
        Arrays.sort(read);
        System.out.printf(
                Locale.ROOT,
                "%s: %d points at hand, drawn in %.2f ms (median; 99 in 100 within %.2f), read in %.2f ms%n",
                what,
                wave.size(),
                took[ROUNDS / 2] / 1e6,
                took[ROUNDS * 99 / 100] / 1e6,
                read[read.length / 2] / 1e6);
    }

    private static TraceRows rows(WaveCurve curve, double last) {
        TraceRows.Row row = new TraceRows.Row(
                "n",
                "engine speed",
                "rpm",
                0,
                9500,
                Double::toString,
                Double::toString,
                List.of(curve),
                null,
                List.of());
        return new TraceRows("Race 1", "a million samples", last, List.of(row), List.of(), Double::toString, "");
    }

    private static KeptReader kept() throws Exception {
        SplittableRandom random = new SplittableRandom(7);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        KeptWriter writer = new KeptWriter(out);
        writer.begin(new Layout(List.of(ColumnForm.other("n").as(ChannelKind.ENGINE_SPEED)), List.of(STEP)));
        double[] row = new double[1];
        double rpm = 4000;
        double way = 4;
        for (int i = 0; i < SAMPLES; i++) {
            way = rpm > 8300 || rpm < 900 || random.nextInt(900) == 0 ? -way : way;
            rpm = Math.max(850, Math.min(8400, rpm + way + random.nextInt(-20, 21)));
            row[0] = random.nextInt(20_000) == 0 ? 9300 : Math.rint(rpm);
            writer.sample(i * STEP, row);
        }
        writer.end();
        return KeptReader.open(Bytes.of(out.toByteArray()));
    }
}
