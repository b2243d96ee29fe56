package witnessmark.logbook.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.LoggerForm;
import witnessmark.domain.OverRev;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TraceMarkKind;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.FixedToday;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleViews;
import witnessmark.trace.LoggerFiles;
import witnessmark.trace.kept.Bytes;
import witnessmark.trace.kept.KeptReader;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.TraceSettings;

/** Files of the invented season brought in for its runs. */
class BringInTraceTest {
    private Desk desk;
    private BringInTrace bringIn;

    @BeforeEach
    void open() {
        desk = new Desk(
                new MemoryLogbook(SampleViews.untraced()), new FixedToday(SampleViews.OPENING), "Team engineer");
        bringIn = new BringInTrace(desk, SampleBooks.ids());
    }

    @Test
    void the_run_it_is_of_is_found_by_day_car_and_name_and_becomes_measured() {
        BroughtTrace trace = read("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        assertThat(run.fact().name()).isEqualTo("Race 1");
        assertThat(run.fact().start().day()).hasToString("2026-05-03");
        assertThat(bringIn.isSure(trace, 0)).isTrue();

        TraceProposal proposal = bringIn.propose(trace, 0, run);
        assertThat(proposal.stops()).as(proposal.problems().toString()).isFalse();
        bringIn.save(proposal, proposal.taken(), "", "trace brought in").orThrow();

        Run now = now(run);
        assertThat(now.knownBy().of(Counter.RUNNING)).isEqualTo(HowKnown.TRACE);
        assertThat(now.knownBy().of(Counter.LOADED)).isEqualTo(HowKnown.TRACE);
        assertThat(now.overRevs()).isEqualTo(1);
        assertThat(now.highest()).isNotNull();
        assertThat(now.highest().rpm()).isEqualTo(9340);
        assertThat(now.laps())
                .as("what the trace does not say stays")
                .isEqualTo(run.fact().laps());
        assertThat(now.knownBy().of(Counter.LAPS))
                .isEqualTo(run.fact().knownBy().of(Counter.LAPS));
        Trace written = traces().get(0).fact();
        assertThat(written.run()).isEqualTo(run.id());
        assertThat(marks(TraceMarkKind.MECHANICAL)).singleElement().satisfies(mark -> {
            assertThat(mark.thousandths()).isEqualTo(9_340_000L);
            assertThat(mark.lasted()).isEqualTo(new RunningTime(420));
        });
        assertThat(written.speeds()).isNotEmpty();
    }

    @Test
    void an_over_rev_somebody_wrote_down_already_is_not_written_twice() {
        BroughtTrace trace = read("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        long before = overRevs(run);
        TraceProposal proposal = bringIn.propose(trace, 0, run);
        bringIn.save(proposal, proposal.taken(), "", "trace brought in").orThrow();

        assertThat(before).as("the sample has it").isEqualTo(1);
        assertThat(overRevs(run)).isEqualTo(1);
    }

    @Test
    void the_same_samples_are_known_again_renamed_and_written_otherwise_and_never_count_twice() {
        String text = LoggerFiles.twice().replace("2026-08-22", "2026-07-05");
        BroughtTrace trace = read("2026-07-05_57_race2.csv", text);
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        save(trace, run);

        for (String again : List.of(text, text.replace(",", ";"), text + "\n")) {
            BroughtTrace other = read("copy of it.csv", again);
            TraceProposal proposal = bringIn.propose(other, 0, run);
            assertThat(proposal.stops()).isTrue();
            assertThat(proposal.problems()).extracting(Problem::kind).contains(ProblemKind.TRACE_BROUGHT_BEFORE);
            assertThat(bringIn.save(proposal, proposal.taken(), "", "again").didWork())
                    .isFalse();
        }
        assertThat(traces()).hasSize(1);
    }

    @Test
    void its_samples_are_kept_and_come_back_as_they_were() throws IOException {
        String text = LoggerFiles.spike();
        BroughtTrace trace = read("2026-05-23_57_p1.csv", text);
        save(trace, bringIn.runs(trace, 0).get(0));

        Trace written = traces().get(0).fact();
        assertThat(written.kept()).isNotNull();
        byte[] kept =
                desk.logbook().kept(written.kept()).orThrow().orElseThrow().bytes();
        KeptReader reader = KeptReader.open(Bytes.of(kept));
        assertThat(reader.columns()).isEqualTo(trace.found().form().columns());
    }

    @Test
    void how_a_file_was_read_is_remembered_for_the_next_of_its_logger() {
        BroughtTrace trace = read("2026-04-11_57_q.csv", LoggerFiles.semicolons());
        save(trace, bringIn.runs(trace, 0).get(0));
        assertThat(desk.view().facts().of(LoggerForm.class).all()).hasSize(1);

        String text = LoggerFiles.semicolons();
        BroughtTrace next =
                read("2026-04-12_57_race1.csv", text.substring(0, text.lastIndexOf('\n', text.length() - 2)));
        assertThat(next.found().form().columns()).isEqualTo(trace.found().form().columns());
        save(
                next,
                bringIn.runs(next, 0).stream()
                        .filter(run ->
                                !run.fact().equals(now(bringIn.runs(trace, 0).get(0))))
                        .findFirst()
                        .orElseThrow());
        assertThat(desk.view().facts().of(LoggerForm.class).all()).hasSize(1);
    }

    /** 07/05/2026, said once to be 5 July, is read so in the next file of that logger without anybody saying it again. */
    @Test
    void the_order_of_day_and_month_is_remembered_with_the_logger() {
        StringBuilder text = new StringBuilder("Date;Time;Engine Speed [rpm]\n");
        for (int i = 0; i < 2 * 1656; i++) {
            text.append("07/05/2026;15:%02d:%04.1f;5000%n"
                    .formatted(i / 120, i % 120 / 2.0)
                    .replace(',', '.'));
        }
        HeldFile file = new HeldFile("2026-07-05_57_race2.csv", text.toString());
        BroughtTrace taken = bringIn.read(file, TraceAnswers.none(), bringIn.settings(file.name()), true, bytes -> true)
                .orThrow();
        assertThat(taken.found().recognised().begins().toLocalDate()).hasToString("2026-05-07");
        assertThat(taken.found().open()).as("taken, and not asked").isEmpty();

        BroughtTrace said = bringIn.read(
                        file, TraceAnswers.none().dayFirst(false), bringIn.settings(file.name()), true, bytes -> true)
                .orThrow();
        assertThat(said.found().recognised().begins().toLocalDate()).hasToString("2026-07-05");
        save(said, bringIn.runs(said, 0).get(0));

        BroughtTrace next = read("2026-07-05_41_race2.csv", text.toString().replace("5000", "5100"));
        assertThat(next.found().asBefore()).isTrue();
        assertThat(next.found().form().time().dayFirst()).isFalse();
        assertThat(next.found().recognised().begins().toLocalDate()).hasToString("2026-07-05");
    }

    @ParameterizedTest
    @ValueSource(strings = {"# Car,57", "Vehicle,57", "Car: 57", "car = 57", "Vehicle;57", "# Car\t57", "Car;57,,,"})
    void a_line_above_the_headings_that_names_a_car_of_the_logbook_is_as_good_as_the_name_of_the_file(String line) {
        String plain = LoggerFiles.spike().replaceAll("(?m)^#.*\n", "");
        BroughtTrace trace = read("log_0042.csv", line + "\n" + plain);
        Id<Car> car =
                desk.view().facts().of(Car.class).named("57").orElseThrow().id();
        assertThat(bringIn.toLog(trace, 0).car()).isEqualTo(car);
        assertThat(bringIn.likeliest(trace, 0).get(0).run().fact().car()).isEqualTo(car);
        BroughtTrace other = read("2026-05-23_41_p1.csv", line + "\n" + plain);
        assertThat(bringIn.toLog(other, 0).car()).as("they say two").isNull();
        BroughtTrace strange = read("log_0042.csv", line.replace("57", "570") + "\n" + plain);
        assertThat(bringIn.toLog(strange, 0).car()).as("no car of the logbook").isNull();
    }

    /** The day alone is no time: nobody goes out at midnight. */
    @Test
    void a_file_that_says_its_day_and_no_time_says_nothing_of_when_it_went_out() {
        String plain = LoggerFiles.spike().replaceAll("(?m)^#.*\n", "");
        RunToLog known = bringIn.toLog(read("log_0042.csv", "Date,2026-07-08\n" + plain), 0);
        assertThat(known.day()).hasToString("2026-07-08");
        assertThat(known.start()).isNull();
        assertThat(known.texts(FieldUnits.metric(DayOrder.DAY_FIRST))).doesNotContainKey(RunField.OUT_AT);
        RunToLog timed = bringIn.toLog(read("log_0042.csv", "Date,2026-07-08\nTime,14:05:00\n" + plain), 0);
        assertThat(timed.start()).isNotNull();
        assertThat(timed.start().wallClock()).isEqualTo("2026-07-08T14:05");
    }

    @Test
    void a_run_nobody_logged_is_written_with_its_trace_in_one_change() {
        BroughtTrace trace = read("2026-07-08_41_test.csv", LoggerFiles.undated());
        RunToLog known = bringIn.toLog(trace, 0);
        assertThat(known.day()).hasToString("2026-07-08");
        int runs = desk.view().facts().of(Run.class).inForce().toList().size();
        FieldUnits units = FieldUnits.metric(DayOrder.DAY_FIRST);
        RunSheet sheet = new RunSheet(desk, SampleBooks.ids(), units);
        Map<RunField, String> filled = known.texts(units);
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(known.car()));
        typed.putAll(filled);
        typed.put(RunField.OUT_AT, "8:30");
        typed.put(RunField.PLANNED, sheet.plannedAt(typed));
        typed.put(RunField.LAPS, "12");
        typed.put(RunField.WATER, "88");
        Entry<Run> fresh = sheet.read(typed).run();
        assertThat(fresh).isNotNull();
        TraceProposal proposal = bringIn.propose(trace, 0, fresh);
        Set<TraceField> taken = RunToLog.taken(proposal, filled, typed);
        bringIn.save(proposal, taken, "", "run and trace").orThrow();

        Run written = desk.view().facts().of(Run.class).get(fresh.id());
        assertThat(written.knownBy().of(Counter.RUNNING)).isEqualTo(HowKnown.TRACE);
        assertThat(written.knownBy().of(Counter.LAPS)).isEqualTo(HowKnown.TIMED);
        assertThat(written.waterHighest())
                .as("typed, so it stays")
                .isEqualTo(Temperature.ofCelsius(new BigDecimal(88)));
        assertThat(taken).doesNotContain(TraceField.WATER).contains(TraceField.HIGHEST, TraceField.LOADED);
        assertThat(traces())
                .singleElement()
                .satisfies(one -> assertThat(one.fact().run()).isEqualTo(fresh.id()));
        desk.undo().orThrow();
        assertThat(traces()).isEmpty();
        assertThat(desk.view().facts().of(Run.class).inForce().toList()).hasSize(runs);
    }

    @Test
    void what_speaks_for_a_run_is_said() {
        BroughtTrace trace = read("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());

        assertThat(bringIn.likeliest(trace, 0).get(0).because())
                .containsExactlyInAnyOrder(
                        LikelyRun.Because.DAY, LikelyRun.Because.CAR, LikelyRun.Because.NAME, LikelyRun.Because.CLOCK);
        assertThat(bringIn.likeliest(trace, 0).get(0).hasTrace()).isFalse();
    }

    /** The run of its car has a trace by then, and another car ran at the same time: it stays the trace of its own car. */
    @Test
    void a_trace_is_never_taken_for_that_of_another_car() {
        BroughtTrace first = read("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Entry<Run> own = bringIn.runs(first, 0).get(0);
        save(first, own);
        BroughtTrace again = read("2026-05-03_41_race1 new.csv", LoggerFiles.mechanicalOverRev() + "\n");
        assertThat(bringIn.likeliest(again, 0).get(0).run().id()).isEqualTo(own.id());
        assertThat(bringIn.likeliest(again, 0).get(0).hasTrace()).isTrue();

        LikelyRun other = bringIn.likeliest(again, 0).stream()
                .filter(LikelyRun::otherCar)
                .findFirst()
                .orElseThrow();
        assertThat(BringInTrace.isSure(List.of(other))).isFalse();
        assertThat(bringIn.propose(again, 0, other.run()).problems())
                .extracting(problem -> problem.kind())
                .contains(ProblemKind.TRACE_OF_OTHER_CAR);
        assertThat(bringIn.propose(again, 0, own).problems())
                .extracting(problem -> problem.kind())
                .doesNotContain(ProblemKind.TRACE_OF_OTHER_CAR);
    }

    /** 48 a second was said of a file whose time is wrong; the next has a time of its own. */
    @Test
    void samples_a_second_that_were_said_of_one_file_are_not_said_of_the_next() {
        Entry<Run> any = desk.view().facts().of(Run.class).all().get(0);
        TraceAnswers said = TraceAnswers.none();
        String text = LoggerFiles.mechanicalOverRev();
        BroughtTrace own = read("2026-05-03_41_race1.csv", text);
        BroughtTrace told = bringIn.read(
                        new HeldFile("2026-05-03_41_race1.csv", text),
                        said.rate(48),
                        bringIn.settings(any.fact().engine()),
                        true,
                        bytes -> true)
                .orThrow();
        assertThat(told.parts().get(0).lasted()).isNotEqualTo(own.parts().get(0).lasted());
        Entry<Run> run = bringIn.runs(told, 0).get(0);
        bringIn.save(bringIn.propose(told, 0, run), Set.of(), "", "trace brought in")
                .orThrow();
        BroughtTrace next = read("2026-05-03_41_race2.csv", text);
        assertThat(next.parts().get(0).lasted()).isEqualTo(own.parts().get(0).lasted());
    }

    @Test
    void what_is_not_taken_stays_as_it_was() {
        BroughtTrace trace = read("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        bringIn.save(bringIn.propose(trace, 0, run), Set.of(), "only kept", "trace brought in")
                .orThrow();

        assertThat(now(run)).isEqualTo(run.fact());
        assertThat(traces()).hasSize(1);
        desk.undo().orThrow();
        assertThat(traces()).isEmpty();
    }

    @Test
    void a_trace_ten_times_too_long_for_its_run_is_refused_whole() {
        BroughtTrace trace = read("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        TraceProposal proposal = bringIn.propose(trace, 0, run);

        assertThat(proposal.problems()).extracting(Problem::kind).contains(ProblemKind.TRACE_TIME_BASE);
        assertThat(bringIn.save(proposal, proposal.taken(), "", "no").didWork()).isFalse();
        assertThat(traces()).isEmpty();
        assertThat(now(run)).isEqualTo(run.fact());
    }

    @Test
    void a_clock_that_was_not_set_gives_no_start() {
        BroughtTrace trace = read("2026-04-12_41_race.csv", LoggerFiles.clockNotSet());

        TraceProposal proposal =
                bringIn.propose(trace, 0, bringIn.runs(trace, 0).get(0));
        assertThat(proposal.figures()).doesNotContainKey(TraceField.START);
    }

    @Test
    void a_file_that_grows_while_it_is_read_is_not_taken() {
        AtomicLong size = new AtomicLong(1_000);
        Outcome<BroughtTrace> read = bringIn.read(
                new HeldFile("growing.csv", LoggerFiles.spike()) {
                    @Override
                    public long size() {
                        return size.getAndAdd(10);
                    }
                },
                TraceAnswers.none(),
                TraceSettings.usual(),
                true,
                bytes -> true);

        assertThat(read.problems()).extracting(Problem::kind).containsExactly(ProblemKind.TRACE_GROWS);
    }

    @Test
    void a_reading_that_is_called_off_keeps_nothing() {
        Outcome<BroughtTrace> read = bringIn.read(
                new HeldFile("big.csv", LoggerFiles.mechanicalOverRev()),
                TraceAnswers.none(),
                TraceSettings.usual(),
                true,
                bytes -> false);

        assertThat(read.problems()).extracting(Problem::kind).containsExactly(ProblemKind.TRACE_STOPPED);
        assertThat(traces()).isEmpty();
    }

    @Test
    void heat_cycles_go_on_from_the_trace_before() {
        BroughtTrace trace = read("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        TraceProposal proposal = bringIn.propose(trace, 0, run);
        Map<TraceField, Object> figures = proposal.figures();

        assertThat(figures.get(TraceField.HEAT_CYCLES))
                .as("nothing before it: cold")
                .isEqualTo(trace.parts().get(0).heat().ifArmed());
    }

    @Test
    void the_running_of_a_trace_is_that_of_the_run_it_was_made_for() {
        BroughtTrace trace = read("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Entry<Run> run = bringIn.runs(trace, 0).get(0);

        RunningTime running =
                (RunningTime) bringIn.propose(trace, 0, run).figures().get(TraceField.RUNNING);
        assertThat(running).isNotNull();
        assertThat((double) running.millis())
                .isCloseTo(
                        run.fact().running().millis(),
                        within(0.1 * run.fact().running().millis()));
    }

    @ParameterizedTest
    @EnumSource
    void every_defect_that_has_a_place_has_a_mark_of_its_word(DefectKind kind) {
        if (kind == DefectKind.CHECKSUM) {
            assertThat(kind.mark()).as("of the file as a whole").isNull();
        } else {
            assertThat(kind.mark().name()).isEqualTo(kind.name());
            assertThat(kind.code()).isEqualTo(kind.mark().code());
        }
    }

    private BroughtTrace read(String name, String text) {
        Entry<Run> any = desk.view().facts().of(Run.class).all().get(0);
        return bringIn.read(
                        new HeldFile(name, text),
                        TraceAnswers.none(),
                        bringIn.settings(any.fact().engine()),
                        true,
                        bytes -> true)
                .orThrow();
    }

    private void save(BroughtTrace trace, Entry<Run> run) {
        TraceProposal proposal = bringIn.propose(trace, 0, run);
        bringIn.save(proposal, proposal.taken(), "", "trace brought in").orThrow();
    }

    private Run now(Entry<Run> run) {
        return desk.view().facts().of(Run.class).get(run.id());
    }

    private List<Entry<Trace>> traces() {
        return desk.view().facts().of(Trace.class).inForce().toList();
    }

    private List<TraceMark> marks(TraceMarkKind kind) {
        return desk.view().facts().of(TraceMark.class).where(mark -> mark.kind() == kind).stream()
                .map(Entry::fact)
                .toList();
    }

    private long overRevs(Entry<Run> run) {
        return desk.view()
                .facts()
                .of(OverRev.class)
                .where(each -> each.run().equals(run.id()))
                .size();
    }
}
