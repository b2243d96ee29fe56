package witnessmark.logbook.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TraceMarkKind;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.sample.FixedToday;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleViews;
import witnessmark.trace.LoggerFiles;
import witnessmark.trace.Packs;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Recognised;
import witnessmark.wording.Measures;
import witnessmark.wording.SeenTraceWords;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** Packed files of the invented season that end too early, or do not fit their checksum, brought in by somebody who is told. */
class CutShortTraceTest {
    private static final String NAME = "2026-05-23_57_p1.csv.gz";
    private static final String TEXT = LoggerFiles.spike();
    private static final Set<TraceField> SUMS =
            Set.of(TraceField.RUNNING, TraceField.LOADED, TraceField.DISTANCE, TraceField.HEAT_CYCLES);

    private Desk desk;
    private BringInTrace bringIn;

    @BeforeEach
    void open() {
        desk = new Desk(
                new MemoryLogbook(SampleViews.untraced()), new FixedToday(SampleViews.OPENING), "Team engineer");
        bringIn = new BringInTrace(desk, SampleBooks.ids());
    }

    /** As the text itself is, cut after its last whole row: the same samples, and so the same figures. */
    @Test
    void a_packed_file_cut_anywhere_comes_to_what_the_rows_before_the_cut_come_to() throws Exception {
        SplittableRandom random = new SplittableRandom(18);
        for (int i = 0; i < 12; i++) {
            byte[] whole = i % 2 == 0 ? Packs.gzip(TEXT) : Packs.zip("p1.csv", TEXT);
            byte[] bytes = Arrays.copyOf(whole, whole.length / 8 + random.nextInt(whole.length * 3 / 4));
            Outcome<BroughtTrace> cut = read(NAME, bytes);
            BroughtTrace trace = cut.orThrow();
            long rows = trace.found().read().rows();
            BroughtTrace plain = read("plain.csv", rowsOf(TEXT, rows)).orThrow();

            assertThat(trace.samples()).isEqualTo(plain.samples());
            assertThat(trace.parts()).isEqualTo(plain.parts());
            assertThat(trace.kept().bytes()).isEqualTo(plain.kept().bytes());
            assertThat(trace.content())
                    .as("known by the bytes as they lie there")
                    .isEqualTo(HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
            assertThat(trace.size()).isEqualTo(bytes.length);
            long lasted = trace.parts().get(0).lasted();
            assertThat(cut.problems())
                    .containsExactly(Problem.of(ProblemKind.TRACE_CUT_SHORT, rows, new RunningTime(lasted / 1_000)));
            assertThat(trace.found().defects().of(DefectKind.CUT_OFF))
                    .singleElement()
                    .satisfies(defect -> assertThat(defect.from()).isEqualTo(lasted));
        }
    }

    @Test
    void sums_of_a_run_whose_end_is_missing_are_taken_only_by_whoever_ticks_them() {
        byte[] whole = Packs.gzip(TEXT);
        BroughtTrace half = read(NAME, Arrays.copyOf(whole, whole.length / 2)).orThrow();
        Entry<Run> run = bringIn.runs(half, 0).get(0);
        TraceProposal proposal = bringIn.propose(half, 0, run);

        assertThat(proposal.stops()).isFalse();
        assertThat(proposal.figures()).containsKeys(SUMS.toArray(TraceField[]::new));
        assertThat(proposal.taken()).as("the run says more of all the others").containsExactly(TraceField.START);
        BroughtTrace most = read(NAME, Arrays.copyOf(whole, whole.length - 400)).orThrow();
        assertThat(bringIn.propose(most, 0, run).taken())
                .as("nearly all of it is there")
                .containsAll(SUMS);

        bringIn.save(proposal, proposal.taken(), "", "what there is of it").orThrow();
        Run now = desk.view().facts().of(Run.class).get(run.id());
        assertThat(now.running()).isEqualTo(run.fact().running());
        assertThat(now.highest()).isEqualTo(run.fact().highest());
        Trace written = traces().get(0);
        assertThat(written.defects()).contains("cut off=1");
        assertThat(desk.view().facts().of(TraceMark.class).where(mark -> mark.kind() == TraceMarkKind.CUT_OFF))
                .singleElement()
                .satisfies(mark -> assertThat(mark.fact().at()).isEqualTo(written.lasted()));

        BroughtTrace again = read("whole.csv.gz", whole).orThrow();
        assertThat(bringIn.propose(again, 0, run).problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.TRACE_OF_RUN_ALREADY);
        assertThat(bringIn.propose(half, 0, run).stops())
                .as("the same cut file")
                .isTrue();
    }

    @Test
    void what_was_seen_before_the_cut_is_taken_where_it_goes_further_than_the_run_says() {
        byte[] whole = Packs.gzip(TEXT);
        BroughtTrace half = read(NAME, Arrays.copyOf(whole, whole.length / 2)).orThrow();
        Entry<Run> run = bringIn.runs(half, 0).get(0);
        Map<TraceField, Object> less = Map.of(
                TraceField.HIGHEST, new EngineSpeed(8_000),
                TraceField.WATER, Temperature.ofCelsius(new BigDecimal("70")),
                TraceField.OIL_TEMPERATURE, Temperature.ofCelsius(new BigDecimal("80")),
                TraceField.OIL_PRESSURE, Pressure.ofBar(new BigDecimal("5")));
        for (Map.Entry<TraceField, Object> each : less.entrySet()) {
            Map<TraceField, Object> one = Map.of(each.getKey(), each.getValue());
            Run shy = RunFromTrace.of(run.fact(), one, one.keySet(), false);
            Entry<Run> other = new Entry<>(run.id(), shy, run.standing(), null, run.rev());
            assertThat(bringIn.propose(half, 0, other).taken())
                    .containsExactlyInAnyOrder(TraceField.START, each.getKey());
        }
    }

    @Test
    void of_a_file_that_does_not_fit_its_checksum_nothing_is_taken_unasked() {
        byte[] bytes = Packs.gzip(TEXT);
        bytes[bytes.length - 8] ^= 1;
        Outcome<BroughtTrace> read = read(NAME, bytes);
        assertThat(read.problems()).containsExactly(Problem.of(ProblemKind.TRACE_SUSPECT));
        BroughtTrace trace = read.orThrow();
        assertThat(trace.samples())
                .isEqualTo(read("plain.csv", TEXT.getBytes(StandardCharsets.UTF_8))
                        .orThrow()
                        .samples());
        TraceProposal proposal =
                bringIn.propose(trace, 0, bringIn.runs(trace, 0).get(0));
        assertThat(proposal.figures()).isNotEmpty();
        assertThat(proposal.taken()).isEmpty();
        assertThat(proposal.stops()).as("a person decides").isFalse();
        assertThat(RunToLog.taken(proposal, Map.of(), Map.of()))
                .as("nor with a run that is logged from it, unseen on its sheet")
                .isEmpty();

        bringIn.save(proposal, Set.of(TraceField.HIGHEST), "looked at", "by hand")
                .orThrow();
        Trace written = traces().get(0);
        assertThat(written.defects()).contains("wrong checksum=1");
        Texts texts = Texts.in(Locale.UK);
        SeenTraceWords words = new SeenTraceWords(texts, new Measures(texts, Units.METRIC));
        assertThat(words.summary(written))
                .endsWith("its file did not fit its own checksum, so any figure may be wrong");
    }

    @Test
    void a_cut_that_leaves_no_row_is_refused_as_before() {
        byte[] head = Packs.gzip(TEXT.substring(0, TEXT.indexOf("\n0.00,") + 3));
        for (byte[] bytes : List.of(Arrays.copyOf(head, head.length - 9), Arrays.copyOf(Packs.gzip(TEXT), 80))) {
            assertThat(read(NAME, bytes).problems()).containsExactly(Problem.of(ProblemKind.PACKED_ENDS_EARLY));
        }
        byte[] letter = Packs.gzip("Dear team\n");
        letter[letter.length - 8] ^= 1;
        assertThat(read(NAME, letter).problems()).containsExactly(Problem.of(ProblemKind.PACKED_CHECK));
    }

    /** The first rows are understood alike wherever in them the file ends. */
    @Test
    void what_is_cut_within_its_beginning_is_understood_by_its_whole_lines() {
        Recognised whole = ReduceTrace.recognised(new HeldFile(NAME, Packs.gzip(TEXT))::open, null)
                .orThrow();
        byte[] some = Packs.gzip(TEXT.substring(0, 9000));
        int read = 0;
        for (int length = 400; length < some.length; length += 7) {
            Outcome<Recognised> cut =
                    ReduceTrace.recognised(new HeldFile(NAME, Arrays.copyOf(some, length))::open, null);
            if (cut.didWork() && cut.orThrow().rows().size() == 20) {
                assertThat(cut.orThrow().form()).isEqualTo(whole.form());
                read++;
            }
        }
        assertThat(read).isGreaterThan(100);
    }

    private Outcome<BroughtTrace> read(String name, byte[] bytes) {
        Entry<Run> any = desk.view().facts().of(Run.class).all().get(0);
        return bringIn.read(
                new HeldFile(name, bytes),
                TraceAnswers.none(),
                bringIn.settings(any.fact().engine()),
                true,
                read -> true);
    }

    private List<Trace> traces() {
        return desk.view().facts().of(Trace.class).inForce().map(Entry::fact).toList();
    }

    /** The text up to the end of a row. */
    private static byte[] rowsOf(String text, long rows) {
        int end = text.indexOf("\n0.00,");
        for (long row = 0; row < rows; row++) {
            end = text.indexOf('\n', end + 1);
        }
        return text.substring(0, end + 1).getBytes(StandardCharsets.UTF_8);
    }
}
