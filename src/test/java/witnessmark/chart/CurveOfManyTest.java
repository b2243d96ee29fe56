package witnessmark.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.traceview.WaveCurve;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.Layout;
import witnessmark.trace.kept.Bytes;
import witnessmark.trace.kept.KeptReader;
import witnessmark.trace.kept.KeptWriter;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Wave;

/** A curve of very many samples: every extreme stands on the pixels where brute force over the samples puts it. */
class CurveOfManyTest {
    private static final int WIDE = 700;
    private static final int HIGH = 240;
    private static final double LOW = 0;
    private static final double MOST = 10_000;

    @Test
    void no_extreme_is_lost_at_any_zoom() throws IOException {
        for (long seed = 1; seed <= 6; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int count = 120_000 + random.nextInt(400_000);
            double[] values = new double[count];
            for (int i = 0; i < count; i++) {
                values[i] = random.nextInt(5000) == 0 ? random.nextInt(9900) : 4000 + 500 * Math.sin(i / 900.0);
                values[i] = i / 20_000 % 5 == 3 ? Double.NaN : Math.rint(values[i]);
            }
            KeptReader kept = kept(values);
            for (int zoom = 0; zoom < 12; zoom++) {
                int first = zoom == 0 ? 0 : random.nextInt(count - 20_000);
                int last = zoom == 0
                        ? count - 1
                        : first + 19_000 + random.nextInt(Math.min(100_000, count - first - 19_000));
                Wave wave = kept.wave(0, 0, first * 1000L, last * 1000L, 1 << 16);
                brute(values, first, last, wave, "seed " + seed + ", zoom " + zoom);
            }
        }
    }

    private static void brute(double[] values, int first, int last, Wave wave, String as) {
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        View view = new View(first / 1e3, last / 1e3, LOW, MOST);
        Rectangle2D room = new Rectangle2D.Double(0, 0, WIDE, HIGH);
        new CurvePainter(g, room, view).draw(new WaveCurve(wave, v -> v, 0), Color.WHITE, new BasicStroke(1));
        g.dispose();
        int slack = wave.fine() ? 0 : 1; // sixty-four samples together may begin a pixel earlier
        for (int i = first; i <= last; i++) {
            if (!Double.isNaN(values[i]) && Math.abs(values[i] - 4000) > 600) {
                int x = (int) Math.min(WIDE - 1, (long) (i - first) * WIDE / (last - first));
                int y = (int) Math.round(view.y(values[i], room));
                boolean drawn = false;
                for (int near = Math.max(0, x - slack); near <= Math.min(WIDE - 1, x + slack); near++) {
                    drawn |= (image.getRGB(near, Math.min(HIGH - 1, y)) & 0xFFFFFF) != 0;
                }
                assertThat(drawn).as("%s: sample %d of %s", as, i, values[i]).isTrue();
            }
        }
    }

    @Test
    void where_nothing_was_logged_nothing_is_drawn() throws IOException {
        double[] values = new double[200_000];
        for (int i = 0; i < values.length; i++) {
            values[i] = i >= 80_000 && i < 120_000 ? Double.NaN : 5000;
        }
        Wave wave = kept(values).wave(0, 0, 0, 199_999_000, 1 << 18);
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        new CurvePainter(g, new Rectangle2D.Double(0, 0, WIDE, HIGH), new View(0, 199.999, LOW, MOST))
                .draw(new WaveCurve(wave, v -> v, 0), Color.WHITE, new BasicStroke(1));
        for (int x = 0; x < WIDE; x++) {
            boolean hole = x > 0.4 * WIDE + 1 && x < 0.6 * WIDE - 1;
            boolean logged = x < 0.4 * WIDE - 1 || x > 0.6 * WIDE + 1;
            boolean drawn = (image.getRGB(x, HIGH / 2) & 0xFFFFFF) != 0;
            assertThat(!(hole && drawn) && !(logged && !drawn))
                    .as("column " + x)
                    .isTrue();
        }
    }

    private static KeptReader kept(double[] values) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        KeptWriter writer = new KeptWriter(out);
        writer.begin(new Layout(List.of(ColumnForm.other("n").as(ChannelKind.ENGINE_SPEED)), List.of(1000L)));
        double[] row = new double[1];
        for (int i = 0; i < values.length; i++) {
            row[0] = values[i];
            writer.sample(i * 1000L, row);
        }
        writer.end();
        return KeptReader.open(Bytes.of(out.toByteArray()));
    }
}
