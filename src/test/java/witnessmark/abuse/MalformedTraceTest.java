package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.trace.Dialect;
import witnessmark.trace.SampleSink;
import witnessmark.trace.Story;
import witnessmark.trace.Watch;
import witnessmark.trace.kept.KeptWriter;
import witnessmark.trace.packed.Packed;
import witnessmark.trace.packed.PackedProblem;
import witnessmark.trace.packed.UnpackLimits;
import witnessmark.trace.reduce.Reducer;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceRead;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.text.Recognition;
import witnessmark.trace.text.TraceReader;

/**
 * Traces of every dialect spoilt where their structure is: cells, rows, delimiters, headings, times, encodings. Each is read
 * as a trace or refused with a reason; nothing is thrown, and what is read never adds up to more than its own length.
 */
class MalformedTraceTest {
    private static final int COUNT = Numbers.of("traces", 100_000, 10_000_000);
    /** How long the traces are, at ten rows each; what a row does is seen in short ones, and one goes on past the opening. */
    private static final int[] SECONDS = {1, 1, 1, 1, 2, 2, 2, 7};

    private static final String[] CELLS = {
        "",
        "NaN",
        "-inf",
        "1e999",
        "-0",
        "--",
        "0x1F",
        "999999999999999999999999",
        "1.2.3",
        "1,2,3",
        "\"",
        "\"\"",
        "\"1",
        "\u0000",
        "\ufffd",
        "9223372036854775807",
        "-9223372036854775808",
        "1e-400",
        "12:00:00",
        "24:61:99.9999",
        "2026-02-30",
        "31/12/1969 23:59:59",
        "\u221e",
        "=1+1",
        "<html>",
        "true",
        ".",
        ",",
        "+",
        "1e",
        "\t",
        " ",
        "1 000",
        "4.9e-324",
        "1.7976931348623157e308"
    };
    private static final TraceSettings SETTINGS = TraceSettings.usual().with(TraceSetting.OVER_REV_ABOVE, 7000);

    @Test
    void whatever_stands_in_a_trace_it_is_read_or_refused() throws Exception {
        Random random = Numbers.random("traces");
        Map<String, Integer> told = new TreeMap<>();
        List<byte[]> whole = new ArrayList<>();
        int seed = 1;
        for (Dialect dialect : Dialect.values()) {
            for (int seconds : SECONDS) {
                whole.add(dialect.bytes(Story.of(seed, 10, seconds), seed++));
            }
        }
        for (int i = 0; i < COUNT; i++) {
            byte[] spoilt = spoilt(whole.get(random.nextInt(whole.size())), random);
            String came;
            try {
                came = read(spoilt, random);
            } catch (RuntimeException | AssertionError e) {
                throw new AssertionError("trace " + i + ": " + new String(spoilt, StandardCharsets.ISO_8859_1), e);
            }
            told.merge(came, 1, Integer::sum);
        }
        Numbers.tell("traces", told);
        assertThat(told).containsKey("read");
    }

    private static String read(byte[] bytes, Random random) throws Exception {
        byte[] text;
        try {
            text = Packed.open(new ByteArrayInputStream(bytes), null, UnpackLimits.usual())
                    .readAllBytes();
        } catch (PackedProblem e) {
            return e.problem().kind().name();
        }
        int length = Math.min(text.length, Recognition.HEAD);
        Outcome<Recognised> recognised = Recognition.of(text, length, true);
        if (!recognised.didWork()) {
            return kind(recognised.problems());
        }
        TraceForm form = recognised.orThrow().form();
        form = form.time().known() ? form : form.with(TimeBase.at(20));
        assertThat(TraceForm.parse(form.text())).isEqualTo(form);
        Reducer reducer = new Reducer(SETTINGS);
        SampleSink sink = random.nextInt(8) == 0
                ? SampleSink.both(reducer, new KeptWriter(new ByteArrayOutputStream()))
                : reducer;
        Outcome<TraceRead> read = TraceReader.read(new ByteArrayInputStream(text), form, sink, Watch.none());
        if (!read.didWork()) {
            return kind(read.problems());
        }
        for (Reduction part : reducer.parts()) {
            assertThat(part.lasted()).isNotNegative();
            if (part.speed() != null) {
                assertThat(part.speed().running()).isBetween(0L, part.lasted() / 1000 + 1);
                assertThat(part.speed().loaded()).isLessThanOrEqualTo(part.lasted() / 1000 + 1);
                assertThat(part.speed().speeds().total()).isEqualTo(part.speed().running());
                assertThat(part.coverage()).isBetween(0.0, 1.0);
            }
        }
        reducer.defects(read.orThrow().defects()).text();
        return recognised.orThrow().open().isEmpty() ? "read" : "read and asked";
    }

    private static String kind(List<Problem> problems) {
        return problems.get(0).kind().name();
    }

    private static byte[] spoilt(byte[] whole, Random random) {
        byte[] bytes = whole;
        int rounds = 1 + random.nextInt(4);
        for (int i = 0; i < rounds; i++) {
            bytes = random.nextInt(3) == 0 ? bytewise(bytes, random) : structural(bytes, random);
        }
        return bytes;
    }

    private static byte[] bytewise(byte[] bytes, Random random) {
        if (bytes.length < 2) {
            return new byte[] {(byte) random.nextInt()};
        }
        byte[] out = bytes.clone();
        switch (random.nextInt(4)) {
            case 0 -> out[random.nextInt(out.length)] = (byte) random.nextInt();
            case 1 -> out = Arrays.copyOf(out, random.nextInt(out.length));
            case 2 -> {
                int at = random.nextInt(out.length);
                Arrays.fill(out, at, Math.min(out.length, at + random.nextInt(60)), (byte) random.nextInt());
            }
            default -> {
                int at = random.nextInt(out.length);
                int length = Math.min(random.nextInt(300), out.length - at);
                byte[] longer = Arrays.copyOf(out, out.length + length);
                System.arraycopy(out, at, longer, at + length, out.length - at);
                out = longer;
            }
        }
        return out;
    }

    private static byte[] structural(byte[] bytes, Random random) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        String end = text.indexOf('\n') < 0 ? "\r" : "\n";
        List<String> lines = new ArrayList<>(Arrays.asList(text.split(end, -1)));
        int line = random.nextInt(Math.min(lines.size(), random.nextBoolean() ? 5 : lines.size()));
        String delimiter = String.valueOf(",;\t| ".charAt(random.nextInt(5)));
        for (char each : ",;\t|".toCharArray()) {
            delimiter = lines.get(line).indexOf(each) > 0 && random.nextInt(5) > 0 ? String.valueOf(each) : delimiter;
        }
        List<String> cells =
                new ArrayList<>(Arrays.asList(lines.get(line).split(java.util.regex.Pattern.quote(delimiter), -1)));
        int cell = random.nextInt(cells.size());
        switch (random.nextInt(9)) {
            case 0 -> cells.set(cell, CELLS[random.nextInt(CELLS.length)]);
            case 1 -> cells.remove(cell);
            case 2 -> cells.add(cell, CELLS[random.nextInt(CELLS.length)]);
            case 3 -> lines.add(random.nextInt(lines.size()), lines.get(line));
            case 4 -> lines.remove(random.nextInt(lines.size()));
            case 5 -> java.util.Collections.swap(lines, line, random.nextInt(lines.size()));
            case 6 -> cells.set(cell, cells.get(cell) + cells.get(random.nextInt(cells.size())));
            case 7 -> {
                String with = CELLS[random.nextInt(CELLS.length)];
                int at = cell;
                lines.replaceAll(each -> column(each, at, with));
                return String.join(end, lines).getBytes(StandardCharsets.ISO_8859_1);
            }
            default -> cells.set(cell, CELLS[random.nextInt(CELLS.length)].repeat(1 + random.nextInt(40)));
        }
        if (line < lines.size()) {
            lines.set(line, String.join(delimiter, cells));
        }
        return String.join(end, lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String column(String line, int at, String with) {
        String[] cells = line.split("[,;\t|]", -1);
        return at < cells.length ? line.replace(cells[at], with) : line;
    }
}
