package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.ChannelKind;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.SpeedFound;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** The same run in every dialect comes to the same, which is the sum over the whole of it. */
class DialectsTest {
    private static final int TRACES = 30;
    private static final double LIMIT = 7200;
    private static final TraceSettings SETTINGS =
            TraceSettings.usual().with(TraceSetting.OVER_REV_ABOVE, LIMIT).with(TraceSetting.HIGH_SPEED_FROM, 6000);

    @ParameterizedTest
    @EnumSource
    void every_dialect_comes_to_the_same_totals(Dialect dialect) {
        for (long seed = 1; seed <= TRACES; seed++) {
            Story story = Story.of(seed, 8 + (int) seed);
            Reads.Read read = Reads.of(dialect.bytes(story, seed), SETTINGS);
            String which = dialect + ", seed " + seed;
            assertThat(read.recognised().open()).as(which).isEmpty();
            assertThat(read.read().late()).as(which).isEmpty();
            holds(which, story, read.only(), dialect == Dialect.SEVERAL_RATES);
            formReadsBack(which, read.recognised().form());
            if (dialect == Dialect.OUT_OF_ORDER_AND_TWICE) {
                assertThat(read.defects().samples().keySet())
                        .as(which)
                        .containsAnyOf(DefectKind.TIME_BACKWARDS, DefectKind.DUPLICATE);
            }
        }
    }

    /** What the head says is understood, and the table is none the less what it is without a head. */
    @ParameterizedTest(name = "head {0}, table {1}")
    @MethodSource("marks")
    void a_head_may_be_parted_otherwise_than_the_table(String head, String delimiter) {
        String named = "Engine Speed [rpm],Throttle [%],Oil Press [bar]\n";
        StringBuilder rows = new StringBuilder(named.replace(",", delimiter));
        for (int i = 0; i < 40; i++) {
            rows.append(6000 + i)
                    .append(delimiter)
                    .append("50.5")
                    .append(delimiter)
                    .append("4.25\n");
        }
        String lines = String.join(
                "\n",
                "Vehicle" + head + "57",
                "Driver" + head + "A. Moor",
                "Date" + head + "2026-05-03",
                "Start time" + head + "14:05:00",
                "Sample rate" + head + "20 Hz",
                "Comment" + head + "wet at first",
                "");
        TraceForm alone = Reads.recognise(bytes(rows.toString())).orThrow().form();
        for (String fill : List.of("", delimiter.repeat(2))) {
            for (String comment : List.of("", "# ")) {
                String text = lines.replaceAll("(?m)^(?=.)", comment).replace("\n", fill + "\n") + rows;
                Recognised found = Reads.recognise(bytes(text)).orThrow();
                assertThat(found.said())
                        .containsEntry("Vehicle", "57")
                        .containsEntry("Driver", "A. Moor")
                        .containsEntry("Sample rate", "20 Hz")
                        .containsEntry("Comment", "wet at first");
                assertThat(found.begins()).isEqualTo(LocalDateTime.of(2026, 5, 3, 14, 5));
                assertThat(found.open()).isEmpty();
                assertThat(found.form().time()).isEqualTo(TimeBase.at(20));
                assertThat(found.form().delimiter()).isEqualTo(alone.delimiter());
                assertThat(found.form().columns()).isEqualTo(alone.columns());
                assertThat(found.form().before()).isEqualTo(7);
            }
        }
    }

    static Stream<Arguments> marks() {
        return Stream.of(";", "\t", ",", ":", ": ", "=", " = ", ":;", ": ,", "|")
                .flatMap(head -> Stream.of(",", ";", "\t", "|").map(delimiter -> Arguments.of(head, delimiter)));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void holds(String which, Story story, Reduction found, boolean slow) {
        WholeSums sums = new WholeSums(story);
        SpeedFound speed = found.speed();
        assertThat(speed).as(which).isNotNull();
        assertThat(found.lasted()).as(which).isEqualTo(story.micros(story.samples - 1));
        assertThat(speed.running()).as(which).isEqualTo(Math.round(sums.secondsFrom(500) * 1000));
        assertThat(speed.loaded()).as(which).isEqualTo(Math.round(sums.secondsFrom(3000) * 1000));
        assertThat(speed.high()).as(which).isEqualTo(Math.round(sums.secondsFrom(6000) * 1000));
        assertThat(speed.speeds().total()).as(which).isEqualTo(speed.running());
        assertThat(speed.revolutions()).as(which).isCloseTo(sums.revolutions(), rel(sums.revolutions()));
        assertThat(found.metres()).as(which).isCloseTo(sums.metres(), rel(sums.metres()));
        assertThat(speed.extremes().highest()).as(which).isEqualTo(sums.highestHeld(ChannelKind.ENGINE_SPEED));
        Extremes oil = found.extremes().get(ChannelKind.OIL_PRESSURE);
        assertThat(oil.highest()).as(which).isCloseTo(sums.highestHeld(ChannelKind.OIL_PRESSURE), within(1e-9));
        if (!slow) {
            assertThat(found.extremes().get(ChannelKind.WATER_TEMPERATURE).highest())
                    .as(which)
                    .isCloseTo(sums.highestHeld(ChannelKind.WATER_TEMPERATURE), within(1e-9));
        }
        assertThat(found.laps()).as(which).isEqualTo(sums.laps());
        assertThat(found.coverage()).as(which).isEqualTo(1.0);
    }

    private static org.assertj.core.data.Offset<Double> rel(double value) {
        return within(1e-9 * Math.abs(value));
    }

    private static void formReadsBack(String which, TraceForm form) {
        assertThat(TraceForm.parse(form.text())).as(which).isEqualTo(form);
    }
}
