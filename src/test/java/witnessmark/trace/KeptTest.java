package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.kept.Bytes;
import witnessmark.trace.kept.KeptReader;
import witnessmark.trace.kept.KeptWriter;
import witnessmark.trace.kept.SampleDigest;
import witnessmark.trace.kept.Samples;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Envelope;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.text.TraceReader;

/** Kept samples come back to the last bit, and no extreme is lost when they are drawn. */
class KeptTest {
    private static final int SEEDS = 60;

    @Test
    void samples_come_back_to_the_last_bit() throws IOException {
        for (long seed = 1; seed <= SEEDS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int rows = random.nextInt(3) == 0 ? 1 + random.nextInt(20) : random.nextInt(1, 10_000);
            int parts = 1 + random.nextInt(3);
            double[][] values = new double[4][rows];
            long[] micros = new long[rows];
            long at = 0;
            for (int i = 0; i < rows; i++) {
                micros[i] = at;
                at += 1 + random.nextInt(100_000);
                values[0][i] = random.nextInt(8000);
                values[1][i] = random.nextInt(-100_000, 100_000) / 1000.0;
                values[2][i] = Double.longBitsToDouble(random.nextLong());
                values[3][i] = random.nextInt(3) == 0 ? Double.NaN : random.nextInt(3) == 0 ? -0.0 : 12.5;
                values[2][i] = Double.isNaN(values[2][i]) ? Double.MIN_VALUE : values[2][i];
            }
            KeptReader kept = KeptReader.open(Bytes.of(written(micros, values, parts)));
            assertThat(kept.parts()).isEqualTo(parts);
            for (int part = 0; part < parts; part++) {
                for (int c = 0; c < values.length; c++) {
                    Samples samples = kept.samples(part, c);
                    assertThat(samples.micros()).as("seed " + seed).isEqualTo(micros);
                    assertThat(bits(samples.values()))
                            .as("seed %d, channel %d", seed, c)
                            .isEqualTo(bits(values[c]));
                }
            }
            long from = micros[rows / 3];
            long until = micros[rows - 1 - rows / 4];
            Samples middle = kept.samples(0, 1, from, until);
            assertThat(middle.micros())
                    .isEqualTo(Arrays.stream(micros)
                            .filter(t -> t >= from && t <= until)
                            .toArray());
        }
    }

    /** Runs of every width that a number can have, and with every zero it can end with. */
    @Test
    void figures_of_any_width_come_back_to_the_last_bit() throws IOException {
        SplittableRandom random = new SplittableRandom(64);
        for (int width = 0; width <= 64; width++) {
            int rows = 300 + random.nextInt(200);
            double[][] values = new double[3][rows];
            long[] micros = new long[rows];
            for (int i = 0; i < rows; i++) {
                micros[i] = i * 1000L + (width < 40 ? random.nextLong(1L << width) : 0);
                long bits = width == 0 ? 0 : random.nextLong() >>> (64 - width);
                values[0][i] = Double.longBitsToDouble(bits);
                values[1][i] = Double.longBitsToDouble(bits << (64 - width));
                values[2][i] = width < 53 ? bits : 0.1 * bits;
            }
            for (double[] channel : values) {
                Arrays.setAll(channel, i -> Double.isNaN(channel[i]) ? 1.5 : channel[i]);
            }
            Arrays.sort(micros);
            KeptReader kept = KeptReader.open(Bytes.of(written(micros, values, 1)));
            for (int c = 0; c < values.length; c++) {
                assertThat(kept.samples(0, c).micros()).isEqualTo(micros);
                assertThat(bits(kept.samples(0, c).values()))
                        .as("%d bits, channel %d", width, c)
                        .isEqualTo(bits(values[c]));
            }
        }
    }

    /** Logbooks of before have samples whose stretches are deflated. Oracle: the figures they were made of. */
    @Test
    void samples_that_were_kept_at_first_are_read_as_ever() throws IOException {
        byte[] file;
        try (InputStream in = KeptTest.class.getResourceAsStream("/trace/kept-first-coding.bin")) {
            file = in.readAllBytes();
        }
        int rows = 5000;
        double[][] values = new double[4][rows];
        long[] micros = new long[rows];
        for (int i = 0; i < rows; i++) {
            micros[i] = i * 1000L + i % 7;
            values[0][i] = i * 37 % 8000;
            values[1][i] = (i * 7919 % 20_000 - 10_000) / 1000.0;
            values[2][i] = Math.sqrt(i) * Math.PI;
            values[3][i] = i % 3 == 0 ? Double.NaN : i % 3 == 1 ? -0.0 : 12.5;
        }
        KeptReader first = KeptReader.open(Bytes.of(file));
        KeptReader now = KeptReader.open(Bytes.of(written(micros, values, 1)));
        for (int c = 0; c < values.length; c++) {
            assertThat(first.samples(0, c).micros()).isEqualTo(micros);
            assertThat(bits(first.samples(0, c).values())).as("channel " + c).isEqualTo(bits(values[c]));
            Envelope before = first.envelope(0, c, 0, micros[rows - 1], 60);
            Envelope same = now.envelope(0, c, 0, micros[rows - 1], 60);
            for (int i = 0; i < 60; i++) {
                assertThat(before.least(i)).isEqualTo(same.least(i));
                assertThat(before.most(i)).isEqualTo(same.most(i));
            }
        }
        for (int i = 0; i < 500; i++) {
            byte[] spoilt = file.clone();
            spoilt[8 + i * 59 % (spoilt.length - 8)] ^= (byte) (1 << i % 8);
            assertThatThrownBy(() -> {
                        KeptReader kept = KeptReader.open(Bytes.of(spoilt));
                        for (int c = 0; c < values.length; c++) {
                            kept.samples(0, c);
                            kept.envelope(0, c, 0, micros[rows - 1], 60);
                        }
                        throw new AssertionError("nothing told");
                    })
                    .as("round " + i)
                    .isInstanceOf(IOException.class);
        }
    }

    @Test
    void every_extreme_is_drawn_at_any_zoom_and_holes_are_holes() throws IOException {
        SplittableRandom random = new SplittableRandom(5);
        int rows = 300_000;
        double[][] values = new double[1][rows];
        long[] micros = new long[rows];
        for (int i = 0; i < rows; i++) {
            micros[i] = i * 1000L;
            values[0][i] = i / 50_000 % 3 == 2 ? Double.NaN : random.nextInt(1000) == 0 ? random.nextInt(99_999) : 5000;
        }
        KeptReader kept = KeptReader.open(Bytes.of(written(micros, values, 1)));
        for (int zoom = 0; zoom < 80; zoom++) {
            int from = random.nextInt(rows - 10);
            int until = from + 1 + random.nextInt(rows - from - 1);
            int pieces = 1 + random.nextInt(1500);
            Envelope envelope = kept.envelope(0, 0, micros[from], micros[until], pieces);
            double low = Double.NaN;
            double high = Double.NaN;
            int holes = 0;
            for (int i = 0; i < pieces; i++) {
                low = Double.isNaN(low) || envelope.least(i) < low ? envelope.least(i) : low;
                high = Double.isNaN(high) || envelope.most(i) > high ? envelope.most(i) : high;
                holes += Double.isNaN(envelope.least(i)) ? 1 : 0;
            }
            double[] seen = Arrays.copyOfRange(values[0], from, until + 1);
            assertThat((Double) low).as("zoom " + zoom).isEqualTo((Double)
                    Arrays.stream(seen).filter(v -> !Double.isNaN(v)).min().orElse(Double.NaN));
            assertThat((Double) high).as("zoom " + zoom).isEqualTo((Double)
                    Arrays.stream(seen).filter(v -> !Double.isNaN(v)).max().orElse(Double.NaN));
            double none = Arrays.stream(seen).filter(Double::isNaN).count() / (double) seen.length;
            if (until - from > pieces) {
                assertThat(holes / (double) pieces)
                        .as("zoom " + zoom)
                        .isBetween(none - 0.05 - 8.0 / pieces, none + 0.05);
            }
        }
    }

    @Test
    void what_was_spoilt_is_told_and_never_read_as_samples() throws IOException {
        SplittableRandom random = new SplittableRandom(9);
        double[][] values = new double[1][9000];
        long[] micros = new long[9000];
        for (int i = 0; i < micros.length; i++) {
            micros[i] = i * 20_000L;
            values[0][i] = random.nextInt(9000);
        }
        byte[] whole = written(micros, values, 1);
        for (int i = 0; i < 2000; i++) {
            byte[] spoilt = random.nextInt(4) == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            if (spoilt.length == whole.length) {
                spoilt[random.nextInt(8, spoilt.length)] ^= (byte) (1 << random.nextInt(8));
            }
            assertThatThrownBy(() -> {
                        KeptReader kept = KeptReader.open(Bytes.of(spoilt));
                        kept.samples(0, 0);
                        kept.envelope(0, 0, 0, micros[8999], 100);
                        throw new AssertionError("nothing told");
                    })
                    .as("round " + i)
                    .isInstanceOf(IOException.class);
        }
    }

    @Test
    void the_same_samples_written_otherwise_have_the_same_digest() {
        Story story = Story.of(3, 20, 10);
        assertThat(digest(Dialect.COMMA.bytes(story, 1)))
                .hasSize(64)
                .isEqualTo(digest(Dialect.SEMICOLON_DECIMAL_COMMA.bytes(story, 1)))
                .isEqualTo(digest(Dialect.UTF_16_BE_MARK.bytes(story, 1)))
                .isNotEqualTo(digest(Dialect.COMMA.bytes(Story.of(4, 20, 10), 1)));
    }

    private static String digest(byte[] bytes) {
        TraceForm form = Reads.recognise(bytes).orThrow().form();
        SampleDigest digest = new SampleDigest();
        TraceReader.read(new ByteArrayInputStream(bytes), form, digest, Watch.none())
                .orThrow();
        return digest.text();
    }

    private static byte[] written(long[] micros, double[][] values, int parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        KeptWriter writer = new KeptWriter(out);
        List<ColumnForm> columns = new ArrayList<>();
        List<Long> steps = new ArrayList<>();
        for (int c = 0; c < values.length; c++) {
            columns.add(
                    ColumnForm.other("channel \u00b0 " + c).as(c == 0 ? ChannelKind.ENGINE_SPEED : ChannelKind.OTHER));
            steps.add(1000L);
        }
        writer.begin(new Layout(columns, steps));
        double[] row = new double[values.length];
        for (int part = 0; part < parts; part++) {
            if (part > 0) {
                writer.part();
            }
            for (int i = 0; i < micros.length; i++) {
                for (int c = 0; c < values.length; c++) {
                    row[c] = values[c][i];
                }
                writer.sample(micros[i], row);
            }
        }
        writer.end();
        return out.toByteArray();
    }

    private static long[] bits(double[] values) {
        return Arrays.stream(values).mapToLong(Double::doubleToRawLongBits).toArray();
    }
}
