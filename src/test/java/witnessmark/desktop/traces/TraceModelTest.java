package witnessmark.desktop.traces;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.HeldFile;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.sample.SampleBooks;
import witnessmark.trace.LoggerFiles;
import witnessmark.trace.Packs;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.TimeBase;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** A file in hand: asked, answered, of which run, what is taken. The files of the invented season. */
class TraceModelTest {
    @TempDir
    Path folder;

    private Desk desk;
    private BringInTrace bringIn;
    private LoggerFile file;
    private TraceModel model;

    @BeforeEach
    void open() {
        SampleBooks books = new SampleBooks(folder);
        desk = books.untraced();
        bringIn = new BringInTrace(desk, SampleBooks.ids());
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private void take(LoggerFile opened, @Nullable Id<Run> wanted) {
        file = opened;
        model = new TraceModel(opened.name(), bringIn.settings(opened.name()), wanted);
        read();
    }

    private void take(String name, String text) {
        take(new HeldFile(name, text), null);
    }

    private void read() {
        for (int i = 0; i < 2; i++) {
            TraceModel.Read read = TraceModel.Read.of(
                    bringIn, desk, bringIn.read(file, model.answers(), model.settings(), true, bytes -> true));
            if (!model.take(read, bringIn)) {
                return;
            }
        }
        throw new AssertionError("it is never read by the figures of its engine");
    }

    private void answer(Question.Kind kind, Object answer) {
        Question question = model.asked().stream()
                .filter(each -> each.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new AssertionError("not asked: " + kind + ", but " + model.asked()));
        assertThat(model.isOpen(question)).as("asked %s", question).isTrue();
        List<Object> choices = model.choices(question);
        assertThat(choices.isEmpty() || choices.contains(answer))
                .as("%s of %s", answer, choices)
                .isTrue();
        model.answer(question, answer);
        read();
        assertThat(model.answer(question)).contains(answer);
        assertThat(model.isOpen(question)).isFalse();
    }

    static Stream<Arguments> season() {
        return Stream.of(
                Arguments.of("2026-03-21_57_run3.csv", LoggerFiles.falseDips(), "Run 3"),
                Arguments.of("2026-04-11_57_q.csv", LoggerFiles.semicolons(), "Qualifying"),
                Arguments.of("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev(), "Race 1"),
                Arguments.of("2026-05-23_57_p1.csv", LoggerFiles.spike(), "Practice 1"),
                Arguments.of("2026-05-24_41_race1.csv", LoggerFiles.steam(), "Race 1"),
                Arguments.of("2026-06-14_57_race2.csv", LoggerFiles.declining(""), "Race 2"),
                Arguments.of("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase(), "Race 2"),
                Arguments.of("2026-08-22_57_p2.csv", LoggerFiles.twice(), ""),
                Arguments.of("2026-09-12_57_p1.csv", LoggerFiles.withoutOilTemperature(), ""),
                Arguments.of("2026-10-04_41_race.csv", LoggerFiles.clockNotSet(), ""));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("season")
    void the_files_of_the_season_find_their_runs_or_wait_for_somebody(String name, String text, String run) {
        take(name, text);

        assertThat(model.isRead()).isTrue();
        assertThat(model.isAsking()).isFalse();
        assertThat(model.run().map(each -> each.run().fact().name()).orElse("")).isEqualTo(run);
        model.run().ifPresent(each -> {
            assertThat(name).startsWith(each.run().fact().start().day().toString());
            assertThat(model.settings())
                    .isEqualTo(bringIn.settings(each.run().fact().engine()));
        });
        boolean refused = name.startsWith("2026-07-05");
        assertThat(model.toSave().isPresent()).isEqualTo(!run.isEmpty() && !refused);
    }

    @Test
    void what_was_put_into_the_files_of_the_season_is_told() {
        DidModel did = new DidModel(Texts.in(Locale.UK), measures());
        take("2026-03-21_57_run3.csv", LoggerFiles.falseDips());
        assertThat(did.events(trace().parts().get(0), trace().found().defects()))
                .singleElement()
                .satisfies(event -> assertThat(event.figures()).startsWith("twice"));
        take("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        assertThat(did.events(trace().parts().get(0), trace().found().defects()))
                .anySatisfy(event -> assertThat(event.what() + event.figures())
                        .contains("mechanical", "0.42 s", "gear 2", "throttle 0 %"));
        take("2026-05-23_57_p1.csv", LoggerFiles.spike());
        assertThat(trace().found().defects().times(DefectKind.SPIKE)).isEqualTo(1);
        assertThat(trace().parts().get(0).overRevs()).isEmpty();
        take("2026-05-24_41_race1.csv", LoggerFiles.steam());
        assertThat(did.events(trace().parts().get(0), trace().found().defects()))
                .anySatisfy(event -> assertThat(event.figures()).contains("62 °C", "steam"));
        take("2026-06-14_57_race2.csv", LoggerFiles.declining(""));
        assertThat(did.figures(trace().parts().get(0)))
                .anySatisfy(figure -> assertThat(figure.more()).contains("fell"));
        take("2026-09-12_57_p1.csv", LoggerFiles.withoutOilTemperature());
        assertThat(did.figures(trace().parts().get(0)))
                .anySatisfy(figure -> assertThat(figure.name() + figure.value()).isEqualTo("Oil, highestnot logged"));
        take("2026-10-04_41_race.csv", LoggerFiles.clockNotSet());
        assertThat(model.told()).extracting(Question::kind).contains(Question.Kind.CLOCK_NOT_SET);
    }

    @Test
    void a_wrong_time_base_is_refused_until_somebody_says_how_time_is_written() {
        take("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        assertThat(problems()).contains(ProblemKind.TRACE_TIME_BASE);
        assertThat(model.toSave()).isEmpty();

        model.rate(20);
        read();
        assertThat(problems()).doesNotContain(ProblemKind.TRACE_TIME_BASE);
        assertThat(model.toSave()).isPresent();
    }

    @Test
    void samples_a_second_are_asked_and_answered() {
        take("a.csv", "Engine Speed;Throttle\n" + "6000;50\n6100;60\n".repeat(600));
        assertThat(model.isRead()).isFalse();
        answer(Question.Kind.SAMPLE_RATE, 20.0);
        assertThat(trace().parts().get(0).lasted()).isEqualTo(1199 * 50_000L);
    }

    @Test
    void the_unit_of_time_is_asked_and_answered() {
        StringBuilder text = new StringBuilder("Time;Engine Speed\n");
        for (int i = 0; i < 600; i++) {
            text.append(i * 10).append(';').append(6000 + i % 7 * 10).append('\n');
        }
        take("a.csv", text.toString());
        answer(Question.Kind.TIME_UNIT, TimeBase.Kind.MILLISECONDS);
        assertThat(trace().parts().get(0).lasted()).isEqualTo(599 * 10_000L);
    }

    @Test
    void a_rate_that_says_otherwise_is_asked_and_either_answer_holds() {
        String text = "Sample rate: 100\nTime [s];Engine Speed\n" + rows(0.1, 400);
        take("a.csv", text);
        answer(Question.Kind.RATE_SAYS_OTHERWISE, 100.0);
        assertThat(trace().parts().get(0).lasted()).isEqualTo(399 * 10_000L);
        take("a.csv", text);
        answer(Question.Kind.RATE_SAYS_OTHERWISE, 10.0);
        assertThat(trace().parts().get(0).lasted()).isEqualTo(399 * 100_000L);
    }

    private static String rows(double step, int rows) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < rows; i++) {
            text.append(String.format(Locale.ROOT, "%.2f;%d%n", i * step, 6000 + i % 5 * 10));
        }
        return text.toString();
    }

    @Test
    void the_decimal_mark_is_asked_and_either_answer_holds() {
        String text = "Engine Speed;Throttle\n" + "6,100;1,250\n6,200;1,500\n".repeat(300);
        take("a.csv", text);
        answer(Question.Kind.DECIMAL_MARK, '.');
        answer(Question.Kind.SAMPLE_RATE, 10.0);
        assertThat(trace().outline().columns().get(0).most()).isEqualTo(6200);
    }

    @Test
    void a_unit_that_does_not_fit_is_asked_and_nothing_is_brought_in_before() {
        String text = LoggerFiles.changed(
                        (row, cells) -> cells.set(5, plain(Double.parseDouble(cells.get(5)) * 14.503773773)))
                .replaceAll(" \\[[^\\]]*\\]", "");
        take("2026-05-23_57_p1.csv", text);
        assertThat(model.toSave()).isEmpty();
        answer(Question.Kind.UNIT, ChannelUnit.PSI);
        assertThat(model.toSave()).isPresent();
        assertThat(trace().parts().get(0).oilAtSpeed()).isBetween(2.0, 5.0);
    }

    private static String plain(double figure) {
        return String.format(Locale.ROOT, "%.3f", figure);
    }

    @Test
    void of_two_columns_that_may_be_one_channel_one_is_picked() {
        StringBuilder text = new StringBuilder("Time [s];RPM;Engine Speed\n");
        for (int i = 0; i < 600; i++) {
            text.append(plain(i * 0.1)).append(";6000;").append(7000 + i % 3).append('\n');
        }
        take("a.csv", text.toString());
        answer(Question.Kind.WHICH_CHANNEL, "RPM");
        assertThat(trace().parts().get(0).speed().extremes().highest()).isEqualTo(6000.0);
        answer_again(Question.Kind.WHICH_CHANNEL, "Engine Speed");
        assertThat(trace().parts().get(0).speed().extremes().highest()).isGreaterThan(6999.0);
    }

    private void answer_again(Question.Kind kind, Object answer) {
        Question question = model.asked().stream()
                .filter(each -> each.kind() == kind)
                .findFirst()
                .orElseThrow();
        model.answer(question, answer);
        read();
    }

    @Test
    void of_several_files_in_an_archive_one_is_picked() {
        take(
                new HeldFile(
                        "2026-05-23_57_p1.zip",
                        Packs.zip("laps.txt", "lap,time\n1,83.2\n", "p1.csv", LoggerFiles.spike())),
                null);
        assertThat(model.isRead()).isFalse();
        answer(Question.Kind.WHICH_TEXT, "p1.csv");
        assertThat(model.isRead()).isTrue();
        assertThat(trace().found().defects().times(DefectKind.SPIKE)).isEqualTo(1);
    }

    @Test
    void a_column_that_was_taken_for_something_else_is_put_right() {
        take("2026-05-23_57_p1.csv", LoggerFiles.spike());
        var water = trace().found().form().columns().get(7);
        assertThat(water.kind()).isEqualTo(ChannelKind.WATER_TEMPERATURE);
        model.channel(water, ChannelKind.OTHER);
        read();
        assertThat(trace().parts().get(0).logs(ChannelKind.WATER_TEMPERATURE)).isFalse();
        assertThat(model.proposal().orElseThrow().figures()).doesNotContainKey(TraceField.WATER);
        model.channel(trace().found().form().columns().get(7), ChannelKind.WATER_TEMPERATURE);
        read();
        assertThat(model.proposal().orElseThrow().figures()).containsKey(TraceField.WATER);
        assertThat(model.taken())
                .as("a figure that is new is ticked as proposed")
                .contains(TraceField.WATER);
    }

    static Stream<Arguments> bad() {
        return Stream.of(
                Arguments.of(new HeldFile("empty.csv", ""), ProblemKind.TRACE_EMPTY),
                Arguments.of(new HeldFile("letter.txt", "Dear team\n"), ProblemKind.TRACE_WITHOUT_FIGURES),
                Arguments.of(new HeldFile("picture.png", picture()), ProblemKind.TRACE_NOT_TEXT),
                Arguments.of(new HeldFile("none.zip", Packs.zip()), ProblemKind.PACKED_EMPTY),
                Arguments.of(
                        new HeldFile("within.zip", Packs.zip("a.zip", "PK\u0003\u0004aaaa")),
                        ProblemKind.PACKED_WITHIN),
                Arguments.of(growing(), ProblemKind.TRACE_GROWS),
                Arguments.of(broken(), ProblemKind.TRACE_BROKE_OFF),
                Arguments.of(gone(), ProblemKind.TRACE_BROKE_OFF));
    }

    private static byte[] picture() {
        byte[] bytes = new byte[4_000];
        new java.util.Random(7).nextBytes(bytes);
        bytes[0] = (byte) 0x89;
        return bytes;
    }

    private static LoggerFile growing() {
        return new HeldFile("growing.csv", LoggerFiles.spike()) {
            private long size;

            @Override
            public long size() {
                size += 10;
                return size;
            }
        };
    }

    private static LoggerFile broken() {
        return new HeldFile("broken.csv", LoggerFiles.spike()) {
            @Override
            public InputStream open() throws IOException {
                return new FilterInputStream(super.open()) {
                    private int left = 400_000;

                    @Override
                    public int read(byte[] into, int offset, int length) throws IOException {
                        if (left <= 0) {
                            throw new IOException("Input/output error");
                        }
                        int read = super.read(into, offset, Math.min(left, length));
                        left -= read;
                        return read;
                    }
                };
            }
        };
    }

    private static LoggerFile gone() {
        return new HeldFile("gone.csv", "x") {
            @Override
            public long size() throws IOException {
                throw new java.nio.file.NoSuchFileException("gone.csv");
            }
        };
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("bad")
    void a_file_that_cannot_be_read_gets_its_sentence(LoggerFile bad, ProblemKind kind) {
        take(bad, null);

        assertThat(model.isRead()).isFalse();
        assertThat(model.toSave()).isEmpty();
        assertThat(model.problems()).extracting(Problem::kind).contains(kind);
        assertThat(new Problems(Texts.in(Locale.UK), measures())
                        .sentence(model.problems().get(0)))
                .endsWith(".");
    }

    @Test
    void reading_that_is_called_off_ends_within_a_piece_of_the_file() {
        HeldFile all = new HeldFile("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        ReadFile read = new ReadFile(all);
        var outcome = bringIn.read(
                read,
                model == null ? witnessmark.logbook.tracing.TraceAnswers.none() : model.answers(),
                bringIn.settings(all.name()),
                true,
                bytes -> {
                    if (bytes > 200_000) {
                        read.stop();
                    }
                    return !read.isStopped();
                });

        assertThat(outcome.didWork()).isFalse();
        assertThat(read.bytes()).isLessThan(2_000_000);
        assertThat(traces()).isEmpty();
    }

    @Test
    void the_run_it_was_called_for_is_the_one_in_hand_and_another_can_be_picked() {
        take("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Id<Run> likeliest = model.run().orElseThrow().run().id();
        Id<Run> other = model.runs().get(3).run().id();
        take(new HeldFile("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev()), other);
        assertThat(model.run().orElseThrow().run().id()).isEqualTo(other);

        if (model.choose(likeliest, bringIn)) {
            read();
        }
        assertThat(model.run().orElseThrow().run().id()).isEqualTo(likeliest);
        model.choose(null, bringIn);
        assertThat(model.run()).isEmpty();
        assertThat(model.toSave()).isEmpty();
        read();
        assertThat(model.run()).as("none stays none").isEmpty();
    }

    @Test
    void a_run_it_is_wanted_for_later_leaves_what_was_answered() {
        take("a.csv", "Engine Speed;Throttle\n" + "6000;50\n6100;60\n".repeat(600));
        answer(Question.Kind.SAMPLE_RATE, 20.0);
        Id<Run> run = model.runs().get(5).run().id();
        model.choose(null, bringIn);
        model.want(run);
        read();
        assertThat(model.run().orElseThrow().run().id()).isEqualTo(run);
        assertThat(model.isAsking()).isFalse();
    }

    @Test
    void what_is_ticked_stays_ticked_when_the_logbook_changes_and_the_file_is_read_again() {
        take("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        model.tick(TraceField.WATER, false);
        model.note("by hand");
        model.look(bringIn, TraceModel.Read.of(bringIn, desk, witnessmark.outcome.Outcome.worked(trace())));
        read();

        assertThat(model.taken()).doesNotContain(TraceField.WATER).contains(TraceField.HIGHEST);
        assertThat(model.note()).isEqualTo("by hand");
    }

    @Test
    void it_is_written_in_one_change_without_samples_where_they_are_not_wanted_and_never_twice() {
        take("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Entry<Run> before = model.run().orElseThrow().run();
        model.keep(false);
        TraceProposal proposal = model.toSave().orElseThrow();
        bringIn.save(proposal, model.taken(), "", "trace").orThrow();
        assertThat(model.saved(model.part())).as("no part is left").isFalse();
        assertThat(model.toSave()).isEmpty();
        assertThat(traces())
                .singleElement()
                .satisfies(one -> assertThat(one.fact().kept()).isNull());

        take("copy.csv", LoggerFiles.mechanicalOverRev());
        model.choose(before.id(), bringIn);
        assertThat(problems()).contains(ProblemKind.TRACE_BROUGHT_BEFORE);
        assertThat(model.toSave()).isEmpty();

        desk.undo().orThrow();
        assertThat(traces()).isEmpty();
        assertThat(desk.view().facts().of(Run.class).get(before.id())).isEqualTo(before.fact());
    }

    @Test
    void each_part_of_a_file_whose_time_begins_anew_is_of_a_run_of_its_own() {
        String one = LoggerFiles.spike();
        String rest = one.substring(one.indexOf('\n') + 1);
        take("2026-05-23_57.csv", one + rest);
        assertThat(trace().parts()).hasSize(2);
        model.choose(model.runs().get(0).run().id(), bringIn);
        bringIn.save(model.toSave().orElseThrow(), model.taken(), "", "first").orThrow();
        assertThat(model.saved(model.part())).isTrue();
        assertThat(model.part()).isEqualTo(1);
        assertThat(model.isDone(0)).isTrue();
        model.choose(
                model.runs().stream()
                        .filter(each -> !each.hasTrace())
                        .skip(1)
                        .findFirst()
                        .orElseThrow()
                        .run()
                        .id(),
                bringIn);
        bringIn.save(model.toSave().orElseThrow(), model.taken(), "", "second").orThrow();
        assertThat(model.saved(model.part())).isFalse();
        assertThat(traces()).hasSize(2).extracting(each -> each.fact().run()).doesNotHaveDuplicates();
    }

    private BroughtTrace trace() {
        return model.trace().orElseThrow();
    }

    private List<ProblemKind> problems() {
        return model.proposal().orElseThrow().problems().stream()
                .map(Problem::kind)
                .toList();
    }

    private List<Entry<Trace>> traces() {
        return desk.view().facts().of(Trace.class).inForce().toList();
    }

    private static Measures measures() {
        return new Measures(Texts.in(Locale.UK), Units.METRIC);
    }
}
