package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.kept.KeptWriter;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceRead;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.text.Recognition;
import witnessmark.trace.text.TraceReader;

/** Each defect of a logger's file that the trade knows (common practice, no source), and files that are no traces. */
class BadTracesTest {
    private static final Story STORY = Story.of(2, 20, 60);

    private static String with(java.util.function.BiConsumer<Integer, List<String>> change) {
        return STORY.changed(change);
    }

    private static ProblemKind refused(byte[] bytes) {
        Outcome<Recognised> recognised = Reads.recognise(bytes);
        assertThat(recognised.didWork()).isFalse();
        return recognised.problems().get(0).kind();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void what_is_no_trace_is_refused_with_the_reason() {
        assertThat(refused(new byte[0])).isEqualTo(ProblemKind.TRACE_EMPTY);
        assertThat(refused(utf8("\ufeff"))).isEqualTo(ProblemKind.TRACE_EMPTY);
        byte[] binary = new byte[5000];
        new java.util.Random(4).nextBytes(binary);
        assertThat(refused(binary)).isEqualTo(ProblemKind.TRACE_NOT_TEXT);
        assertThat(refused(utf8("Time [s],Engine Speed [rpm],Gear\n"))).isEqualTo(ProblemKind.TRACE_WITHOUT_FIGURES);
        assertThat(refused(utf8("Dear team,\nthe trace is in the other mail.\n")))
                .isEqualTo(ProblemKind.TRACE_WITHOUT_FIGURES);
        assertThat(refused(utf8("1,".repeat(10_000_000)))).isEqualTo(ProblemKind.TRACE_TOO_WIDE);
        assertThat(refused(utf8(("1,".repeat(9_999) + "1\n").repeat(3)))).isEqualTo(ProblemKind.TRACE_TOO_WIDE);
    }

    @Test
    void a_row_of_ten_million_columns_within_a_trace_is_left_out() {
        String wide = STORY.csv().replaceFirst("\n1\\.000,", "\n" + "1,".repeat(10_000_000) + "\n1.000,");
        Reads.Read read = Reads.of(wide);
        assertThat(read.defects().times(DefectKind.UNREADABLE_ROW)).isPositive();
        assertThat(read.only().speed().running()).isEqualTo(59_950);
    }

    @Test
    void speed_lost_for_a_moment_is_a_dropout_and_is_bridged() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i >= 400 && i < 420) {
                row.set(1, "0");
            }
        }));
        assertThat(read.defects().located())
                .containsExactly(new Defect(DefectKind.DROPOUT, "Engine Speed", 0, 20_000_000, 21_000_000, 20));
        assertThat(read.only().speed().running()).isEqualTo(59_950);
    }

    @Test
    void an_engine_that_stopped_did_not_run() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i >= 400 && i < 800) {
                row.set(1, "0");
            }
        }));
        assertThat(read.defects().times()).isEmpty();
        assertThat(read.only().speed().running()).isBetween(39_900L, 40_050L);
        assertThat(read.only().speed().covered()).isEqualTo(59_950);
    }

    @Test
    void over_a_long_hole_nothing_is_counted() {
        List<List<String>> rows = STORY.rows();
        rows.subList(400, 520).clear();
        Reads.Read read = Reads.of(STORY.joined(rows));
        assertThat(read.defects().of(DefectKind.GAP)).singleElement().satisfies(gap -> {
            assertThat(gap.from()).isEqualTo(19_950_000);
            assertThat(gap.until()).isEqualTo(26_000_000);
        });
        assertThat(read.only().speed().running()).isEqualTo(59_950 - 6_050);
        assertThat(read.only().coverage()).isBetween(0.89, 0.9);
    }

    @Test
    void a_temperature_of_minus_forty_is_a_spike() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i == 700) {
                row.set(1 + Story.KINDS.indexOf(ChannelKind.WATER_TEMPERATURE), "-40.0");
            }
        }));
        assertThat(read.defects().of(DefectKind.SPIKE))
                .singleElement()
                .satisfies(spike -> assertThat(spike.channel()).isEqualTo("Water Temp"));
        assertThat(read.only().extremes().get(ChannelKind.WATER_TEMPERATURE).lowest())
                .isGreaterThan(40);
    }

    @Test
    void a_temperature_that_jumps_is_left_out() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i >= 700 && i < 705) {
                row.set(1 + Story.KINDS.indexOf(ChannelKind.WATER_TEMPERATURE), "120.0");
            }
        }));
        assertThat(read.defects().of(DefectKind.SENSOR_JUMP))
                .singleElement()
                .satisfies(jump -> assertThat(jump.samples()).isEqualTo(5));
        assertThat(read.only().extremes().get(ChannelKind.WATER_TEMPERATURE).highest())
                .isLessThan(100);
    }

    @Test
    void time_that_begins_anew_parts_the_trace() {
        String csv = STORY.csv();
        String twice = csv + csv.substring(csv.indexOf('\n') + 1);
        Reads.Read read = Reads.of(twice);
        assertThat(read.parts()).hasSize(2);
        assertThat(read.parts().get(1)).isEqualTo(read.parts().get(0));
        assertThat(read.defects().times(DefectKind.RESTART)).isEqualTo(1);
        assertThat(read.read().lasted()).containsExactly(59_950_000L, 59_950_000L);
    }

    @Test
    void a_time_far_ahead_is_left_out_alone() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i == 500) {
                row.set(0, "925.000");
            }
        }));
        assertThat(read.parts()).hasSize(1);
        assertThat(read.defects().times(DefectKind.TIME_BACKWARDS)).isEqualTo(1);
        assertThat(read.only().lasted()).isEqualTo(59_950_000);
    }

    @Test
    void words_in_place_of_figures_are_counted_and_left_out() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i % 50 == 7) {
                row.set(5, i % 100 == 7 ? "NaN" : "sensor");
            }
        }));
        assertThat(read.defects().times(DefectKind.NOT_A_NUMBER)).isEqualTo(12);
        assertThat(read.defects().times(DefectKind.TEXT)).isEqualTo(12);
        assertThat(read.defects().of(DefectKind.TEXT).get(0).channel()).isEqualTo("Oil Press");
        assertThat(read.only().speed().running()).isEqualTo(59_950);
    }

    @Test
    void a_pressure_that_stands_still_while_speed_does_not_is_frozen() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i >= 300 && i < 900) {
                row.set(1 + Story.KINDS.indexOf(ChannelKind.OIL_PRESSURE), "4.20");
            }
        }));
        assertThat(read.defects().of(DefectKind.FROZEN)).singleElement().satisfies(frozen -> {
            assertThat(frozen.channel()).isEqualTo("Oil Press");
            assertThat(frozen.samples()).isEqualTo(600);
        });
    }

    @Test
    void a_speed_that_stands_still_while_the_throttle_does_not_is_not_counted() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i >= 300 && i < 600) {
                row.set(1, "5000");
            }
        }));
        assertThat(read.defects().of(DefectKind.FROZEN))
                .singleElement()
                .satisfies(frozen -> assertThat(frozen.until() - frozen.from()).isEqualTo(14_950_000));
        assertThat(read.only().speed().covered()).isEqualTo(59_950 - 14_950);
        assertThat(read.only().speed().running()).isEqualTo(59_950 - 14_950);
    }

    @Test
    void the_noise_of_the_starter_is_no_speed_and_a_sensor_off_at_rest_is_told() {
        Reads.Read read = Reads.of(with((i, row) -> {
            if (i < 110) {
                row.set(1, i == 0 ? "12000" : i % 7 == 3 && i > 40 && i < 100 ? "9000" : i > 60 ? "250" : "0");
                row.set(1 + Story.KINDS.indexOf(ChannelKind.OIL_PRESSURE), "-0.30");
                row.set(2, "0.0");
            }
        }));
        assertThat(read.defects().samples().get(DefectKind.CRANKING)).isEqualTo(9);
        assertThat(read.only().oilOffset()).isEqualTo(-0.3, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(read.only().speed().extremes().highest()).isLessThan(8600);
        assertThat(read.defects().times(DefectKind.OFFSET)).isEqualTo(1);
    }

    @Test
    void a_last_row_that_ends_half_way_is_left_out() {
        String csv = STORY.csv();
        Reads.Read read = Reads.of(csv.substring(0, csv.length() - 12));
        assertThat(read.defects().times(DefectKind.CUT_OFF)).isEqualTo(1);
        assertThat(read.only().lasted()).isEqualTo(59_900_000);
    }

    @ParameterizedTest
    @CsvSource({"psi,Oil Press,14.503773773,5,psi", "degrees F,Water Temp,1,7,°F", "tens,Engine Speed,0.1,1,10 rpm"})
    void figures_of_another_unit_are_asked_about(String what, String heading, double times, int column, String unit) {
        String text = STORY.changed((i, row) -> {
                    double value = Double.parseDouble(row.get(column));
                    double other = what.equals("degrees F") ? value * 1.8 + 32 : value * times;
                    row.set(column, Dialect.plain(other, 3));
                })
                .replaceAll(" \\[[^\\]]*\\]", "");
        Reads.Read read = Reads.of(text);
        List<Question> asked = new ArrayList<>(read.recognised().open());
        asked.addAll(read.read().late());
        assertThat(asked).anySatisfy(question -> {
            assertThat(question.kind()).isEqualTo(Question.Kind.UNIT);
            assertThat(question.facts().get(0)).isEqualTo(heading);
            assertThat((List<?>) question.facts().get(5)).asString().contains(unit);
        });
        TraceForm form = read.recognised().form();
        int at = form.named(heading);
        ChannelUnit said = witnessmark.domain.Coded.of(ChannelUnit.class, unit);
        TraceForm answered = form.with(at, form.columns().get(at).in(said));
        Reads.Read again = Reads.of(utf8(text), read.recognised(), answered, TraceSettings.usual());
        assertThat(again.read().late()).noneMatch(question -> question.column() == at);
    }

    @Test
    void what_can_be_read_in_two_ways_is_asked() {
        assertThat(asked("Engine Speed;Throttle\n6000;50\n6100;60\n6200;70\n")).contains(Question.Kind.SAMPLE_RATE);
        assertThat(asked("Time;Engine Speed\n0;6000\n10;6050\n20;6100\n30;6200\n"))
                .contains(Question.Kind.TIME_UNIT);
        assertThat(asked("Engine Speed;Throttle\n6,100;1,250\n6,200;1,500\n")).contains(Question.Kind.DECIMAL_MARK);
        assertThat(asked("Sample rate: 100\nTime [s];Engine Speed\n0.0;6000\n0.1;6050\n0.2;6100\n"))
                .contains(Question.Kind.RATE_SAYS_OTHERWISE);
        assertThat(asked("Time [s];RPM;Engine Speed\n0.0;6000;6001\n0.1;6050;6051\n"))
                .contains(Question.Kind.WHICH_CHANNEL);
        assertThat(asked("Date;Time;Engine Speed\n03/04/2026;10:00:00.0;6000\n03/04/2026;10:00:00.1;6050\n"))
                .containsExactly(Question.Kind.DAY_OR_MONTH);
    }

    /** The same cells, first as 3 April, then as 4 March: the answer moves the whole trace and changes nothing else in it. */
    @Test
    void the_order_of_day_and_month_can_be_said() {
        byte[] rows = utf8("Date;Time;Engine Speed\n03/04/2026;10:00:00.0;6000\n03/04/2026;10:00:00.1;6050\n");
        byte[] lines = utf8("Date: 03/04/2026\nTime: 10:15:00\nTime [s];Engine Speed\n0.0;6000\n0.1;6050\n");
        for (byte[] file : List.of(rows, lines)) {
            Recognised day = Recognition.of(file, file.length, true, true).orThrow();
            Recognised month = Recognition.of(file, file.length, true, false).orThrow();
            assertThat(day.begins().toLocalDate()).isEqualTo("2026-04-03");
            assertThat(month.begins().toLocalDate()).isEqualTo("2026-03-04");
            assertThat(month.begins().toLocalTime()).isEqualTo(day.begins().toLocalTime());
            assertThat(month.questions()).isEqualTo(day.questions());
            Reads.Read one = Reads.of(file, day, day.form(), TraceSettings.usual());
            Reads.Read other = Reads.of(file, month, month.form(), TraceSettings.usual());
            assertThat(other.read().rows()).isEqualTo(one.read().rows());
            assertThat(other.read().lasted()).isEqualTo(one.read().lasted());
        }
    }

    private static List<Question.Kind> asked(String text) {
        return Reads.recognise(utf8(text)).orThrow().questions().stream()
                .map(Question::kind)
                .toList();
    }

    @Test
    void a_rate_somebody_says_is_the_time() {
        byte[] bytes = utf8("Engine Speed;Throttle\n" + "6000;50\n".repeat(101));
        Recognised recognised = Reads.recognise(bytes).orThrow();
        TraceForm form = recognised.form().with(TimeBase.at(50));
        assertThat(Reads.of(bytes, recognised, form, TraceSettings.usual())
                        .only()
                        .speed()
                        .running())
                .isEqualTo(2000);
    }

    @Test
    void a_stream_that_breaks_or_is_stopped_leaves_a_reason() {
        byte[] bytes = utf8(STORY.csv());
        TraceForm form = Reads.recognise(bytes).orThrow().form();
        InputStream breaks = new InputStream() {
            private int at;

            @Override
            public int read() throws IOException {
                if (at == 20_000) {
                    throw new IOException("stick pulled out");
                }
                return bytes[at++];
            }
        };
        Outcome<TraceRead> broken = TraceReader.read(breaks, form, nothing(), Watch.none());
        assertThat(broken.problems())
                .containsExactly(Problem.of(ProblemKind.TRACE_BROKE_OFF, 20_000L, "stick pulled out"));
        AtomicLong seen = new AtomicLong();
        Outcome<TraceRead> stopped = TraceReader.read(Reads.inPieces(bytes, () -> 1000), form, nothing(), read -> {
            seen.set(read);
            return read < 10_000;
        });
        assertThat(stopped.problems()).containsExactly(Problem.of(ProblemKind.TRACE_STOPPED, seen.get()));
        assertThat(seen.get()).isBetween(10_000L, 11_000L);
        KeptWriter full = new KeptWriter(new java.io.OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("no space left");
            }
        });
        assertThat(TraceReader.read(new ByteArrayInputStream(bytes), form, full, Watch.none())
                        .problems())
                .containsExactly(Problem.of(ProblemKind.TRACE_NOT_KEPT, "no space left"));
    }

    private static SampleSink nothing() {
        return new witnessmark.trace.reduce.Reducer(TraceSettings.usual());
    }
}
