package witnessmark.logbook.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.LoggerForm;
import witnessmark.domain.OverRev;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TraceMarkKind;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;
import witnessmark.sample.FixedToday;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleViews;
import witnessmark.trace.Packs;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.Reduction;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The files that lie in {@code sample-season/traces}, brought into the sample season: what design 14.21 expects of each. */
class SeasonFilesTest {
    private static final Path FILES = SampleBooks.FOLDER.resolve("traces");
    private static final int VARIANTS = 100;

    private static Facts untraced = Facts.none();

    private final Desk desk =
            new Desk(new MemoryLogbook(untraced), new FixedToday(SampleViews.WINTER), "Team engineer");
    private final BringInTrace bringIn = new BringInTrace(desk, SampleBooks.ids());

    @BeforeAll
    static void tell() {
        Facts all = SampleViews.end().facts();
        List<Entry<?>> rows = new ArrayList<>();
        RecordTypes.all()
                .forEach(type -> all.of(type.kind()).all().stream()
                        .filter(row -> !(row.fact() instanceof Trace
                                || row.fact() instanceof TraceMark
                                || row.fact() instanceof LoggerForm))
                        .forEach(rows::add));
        untraced = Facts.none().with(rows);
    }

    @Test
    void oil_pressure_at_nothing_for_0_2_s_is_a_false_dip() {
        Brought trace = bring("2026-03-21_57_run3.csv.gz");
        assertThat(trace.part().dips()).isEmpty();
        assertThat(marks(TraceMarkKind.OIL_DIP)).isEmpty();
        assertThat(marks(TraceMarkKind.SENSOR_DROP))
                .extracting(TraceMark::at, TraceMark::lasted)
                .containsExactly(
                        tuple(new RunningTime(620_000), new RunningTime(200)),
                        tuple(new RunningTime(1_160_000), new RunningTime(200)));
    }

    @Test
    void semicolons_and_decimal_commas_are_read_without_a_question() {
        Brought trace = bring("2026-04-11_57_q.csv.gz");
        assertThat(trace.read().found().recognised().questions()).isEmpty();
        assertThat(trace.run().fact().name()).isEqualTo("Qualifying");
    }

    @Test
    void there_is_one_mechanical_over_rev_of_9340_for_0_42_s() {
        Brought trace = bring("2026-05-03_41_race1.csv.gz");
        assertThat(trace.part().overRevs()).singleElement().satisfies(over -> {
            assertThat(over.how()).isEqualTo(Excursion.How.MECHANICAL);
            assertThat(over.peak()).isEqualTo(9340);
            assertThat(over.samples()).isEqualTo(21);
            assertThat(over.lasted()).isEqualTo(420_000);
            assertThat(over.throttle()).isZero();
        });
        assertThat(marks(TraceMarkKind.MECHANICAL)).hasSize(1);
        assertThat(desk.view().facts().of(OverRev.class).all())
                .as("the one that was written down that day")
                .hasSize(1);
    }

    @Test
    void a_single_sample_of_19800_is_no_over_rev() {
        Brought trace = bring("2026-05-23_57_p1.csv.gz");
        assertThat(trace.part().overRevs()).isEmpty();
        assertThat(trace.part().speed().extremes().highest()).isEqualTo(8215);
        assertThat(marks(TraceMarkKind.SPIKE)).hasSize(1);
    }

    @Test
    void water_that_falls_while_the_engine_is_hot_is_told() {
        Brought trace = bring("2026-05-24_41_race1.csv.gz");
        assertThat(trace.part().falls()).singleElement().satisfies(fall -> {
            assertThat(fall.from()).isEqualTo(117);
            assertThat(fall.to()).isEqualTo(62);
        });
        assertThat(marks(TraceMarkKind.IMPLAUSIBLE_FALL)).hasSize(1);
    }

    @Test
    void a_gap_of_3_2_s_is_bridged_and_marked_and_the_decline_shown() {
        Brought trace = bring("2026-06-14_57_race2.csv.gz");
        assertThat(marks(TraceMarkKind.GAP)).extracting(TraceMark::lasted).containsExactly(new RunningTime(3_200));
        assertThat(trace.part().speed().running()).isEqualTo(894_000);
        assertThat(trace.part().oilTrend().declined())
                .isLessThan(0.8 * trace.part().oilTrend().first());
        assertThat(trace.part().oilAtSpeed()).isEqualTo(1.9);
    }

    @Test
    void a_time_ten_times_too_slow_is_refused_until_somebody_says_the_rate() {
        BroughtTrace trace = read("2026-07-05_57_race2.csv.gz", TraceAnswers.none());
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        TraceProposal proposal = bringIn.propose(trace, 0, run);
        assertThat(proposal.stops()).isTrue();
        assertThat(sentences(proposal.problems()))
                .containsExactly("By its time the trace lasts 4 h 36 min, and the run 27 min 36 s: 10 times as much.");
        assertThat(bringIn.save(proposal, proposal.taken(), "", "no").didWork()).isFalse();

        TraceAnswers rate = new TraceAnswers(null, 20.0, null, null, null, Map.of(), Map.of());
        BroughtTrace right = read("2026-07-05_57_race2.csv.gz", rate);
        TraceProposal again = bringIn.propose(right, 0, run);
        assertThat(again.problems()).isEmpty();
        assertThat(again.figures()).containsEntry(TraceField.RUNNING, run.fact().running());
    }

    @Test
    void the_same_file_a_second_time_is_refused() {
        bring("2026-08-22_57_p2.csv.gz");
        BroughtTrace again = read("2026-08-22_57_p2.csv.gz", TraceAnswers.none());
        TraceProposal proposal =
                bringIn.propose(again, 0, bringIn.runs(again, 0).get(0));
        assertThat(proposal.stops()).isTrue();
        assertThat(proposal.problems()).extracting(Problem::kind).contains(ProblemKind.TRACE_BROUGHT_BEFORE);
        assertThat(sentences(proposal.problems()).get(0)).contains("2026-08-22_57_p2.csv.gz", "Practice");
        assertThat(traces()).hasSize(1);
    }

    @Test
    void oil_temperature_that_is_not_in_the_file_is_not_logged() {
        Brought trace = bring("2026-09-12_57_p1.csv.gz");
        assertThat(trace.part().logs(ChannelKind.OIL_TEMPERATURE)).isFalse();
        assertThat(traces().get(0).fact().oilHighest()).isNull();
        assertThat(traces().get(0).fact().waterHighest()).isNotNull();
        assertThat(desk.view().facts().of(Run.class).get(trace.run().id()).oilHighest())
                .as("what the run had stays")
                .isEqualTo(trace.run().fact().oilHighest());
    }

    @Test
    void a_clock_of_the_year_2000_is_told_and_a_person_says_the_run() {
        Brought trace = bring("2026-10-04_41_race.csv.gz");
        assertThat(trace.read().found().recognised().questions())
                .extracting(Question::kind)
                .containsExactly(Question.Kind.CLOCK_NOT_SET);
        assertThat(traces().get(0).fact().begins()).isNull();
        Run race = desk.view().facts().of(Run.class).get(trace.run().id());
        assertThat(race.start()).isEqualTo(trace.run().fact().start());
        assertThat(race.start().day()).isEqualTo(LocalDate.of(2026, 10, 4));
    }

    // The same trace again

    static Stream<String> names() throws IOException {
        try (Stream<Path> all = Files.list(FILES)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList().stream();
        }
    }

    /**
     * Renamed, packed, in another encoding, with other line ends, delimiters, a heading more, a delimiter at the end: whatever
     * is done to it, it is the same trace, or one that no run can be taken from twice.
     */
    @Test
    void the_same_trace_however_it_is_written_moves_no_run_twice() throws IOException {
        long seed = Long.getLong("seed", 20_260_822L);
        System.out.println("the same trace again: seed " + seed);
        SplittableRandom random = new SplittableRandom(seed);
        String text = unpacked("2026-08-22_57_p2.csv.gz");
        String shorter = text.substring(0, text.indexOf("\n600.00,") + 1);
        bringIn(new HeldFile("first.csv", shorter.getBytes(StandardCharsets.UTF_8)));
        Facts before = desk.view().facts();
        Set<String> done = new LinkedHashSet<>();
        for (int i = 0; i < VARIANTS; i++) {
            Variant variant = Variant.of(shorter, random);
            done.add(variant.how());
            BroughtTrace trace = read(new HeldFile(variant.name(), variant.bytes()), TraceAnswers.none());
            assertThat(trace.parts())
                    .as("seed %d, %d: %s", seed, i, variant.how())
                    .hasSize(1);
            Entry<Run> run = bringIn.runs(trace, 0).get(random.nextInt(10));
            TraceProposal proposal = bringIn.propose(trace, 0, run);
            assertThat(proposal.problems())
                    .as("seed %d, %d: %s", seed, i, variant.how())
                    .extracting(Problem::kind)
                    .contains(ProblemKind.TRACE_BROUGHT_BEFORE);
            assertThat(bringIn.save(proposal, proposal.taken(), "", "again").didWork())
                    .isFalse();
        }
        assertThat(done).hasSizeGreaterThan(30);
        assertThat(desk.view().facts()).isSameAs(before);
    }

    /** A longer or shorter piece of the same drive is another file: the run it would be taken for has a trace already. */
    @Test
    void a_piece_of_the_same_drive_is_told_for_its_run() throws IOException {
        String text = unpacked("2026-08-22_57_p2.csv.gz");
        Brought whole = bringIn(new HeldFile("2026-08-22_57_p2.csv", text.getBytes(StandardCharsets.UTF_8)));
        SplittableRandom random = new SplittableRandom(16);
        int rows = text.lastIndexOf("\n");
        for (int i = 0; i < 12; i++) {
            int cut = text.indexOf('\n', rows / 2 + random.nextInt(rows / 2 - 200)) + 1;
            byte[] piece = text.substring(0, cut).getBytes(StandardCharsets.UTF_8);
            BroughtTrace trace = read(new HeldFile("2026-08-22_57_p2.csv", piece), TraceAnswers.none());
            TraceProposal proposal = bringIn.propose(trace, 0, whole.run());
            assertThat(proposal.problems())
                    .as("cut at %d", cut)
                    .extracting(Problem::kind)
                    .contains(ProblemKind.TRACE_OF_RUN_ALREADY);
        }
    }

    /** A way to write the same samples. */
    private record Variant(String how, String name, byte[] bytes) {
        private static final List<Charset> CHARSETS =
                List.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1, StandardCharsets.UTF_16LE);
        private static final String[] DELIMITERS = {",", ";", "\t", "|"};
        private static final String[] ENDS = {"\n", "\r\n", "\r"};

        static Variant of(String text, SplittableRandom random) {
            List<String> how = new ArrayList<>();
            String delimiter = DELIMITERS[random.nextInt(DELIMITERS.length)];
            String end = ENDS[random.nextInt(ENDS.length)];
            boolean comma = !delimiter.equals(",") && random.nextBoolean();
            boolean quoted = random.nextInt(4) == 0;
            boolean zeros = random.nextInt(3) == 0;
            how.add("delimiter " + (int) delimiter.charAt(0) + ", end " + end.length() + (int) end.charAt(0));
            how.add(comma ? "decimal comma" : "point");
            how.add((quoted ? "quoted" : "") + (zeros ? " zeros" : ""));
            StringBuilder out = new StringBuilder(random.nextBoolean() ? "# copied" + delimiter + "once" + end : "");
            for (String line : text.split("\n")) {
                boolean row = Character.isDigit(line.charAt(0));
                List<String> cells = new ArrayList<>(Arrays.asList(line.split(",")));
                for (int c = 0; c < cells.size(); c++) {
                    String cell = cells.get(c);
                    cell = row && zeros && cell.contains(".") ? cell + "0" : cell;
                    cell = row && comma ? cell.replace('.', ',') : cell;
                    cells.set(c, quoted && !line.startsWith("#") ? '"' + cell + '"' : cell);
                }
                out.append(String.join(delimiter, cells)).append(end);
            }
            Charset charset = CHARSETS.get(random.nextInt(CHARSETS.size()));
            boolean mark =
                    charset == StandardCharsets.UTF_16LE || charset == StandardCharsets.UTF_8 && random.nextBoolean();
            byte[] bytes = ((mark ? "\ufeff" : "") + out).getBytes(charset);
            how.add(charset + (mark ? " with a mark" : ""));
            int packing = random.nextInt(3);
            how.add(packing == 0 ? "plain" : packing == 1 ? "gzip" : "zip");
            String name = "copy " + random.nextInt(1000) + ".csv";
            return new Variant(String.join("; ", how), name, packed(packing, name, bytes));
        }

        private static byte[] packed(int packing, String name, byte[] bytes) {
            return packing == 1 ? Packs.gzip(bytes) : packing == 2 ? Packs.zip(name, bytes) : bytes;
        }
    }

    /** Whatever of the ten was brought in is refused when it comes again in the same logbook. */
    @ParameterizedTest
    @MethodSource("names")
    void each_of_the_ten_counts_once(String name) {
        if (name.startsWith("2026-07-05")) {
            return; // refused the first time already
        }
        Brought first = bring(name);
        BroughtTrace again = read(name, TraceAnswers.none());
        assertThat(bringIn.propose(again, 0, first.run()).stops()).isTrue();
    }

    // Bringing in

    private record Brought(BroughtTrace read, Entry<Run> run) {
        Reduction part() {
            return read.parts().get(0);
        }
    }

    private Brought bring(String name) {
        return bringIn(new HeldFile(name, shipped(name)));
    }

    private Brought bringIn(HeldFile file) {
        BroughtTrace trace = read(file, TraceAnswers.none());
        Entry<Run> run = bringIn.runs(trace, 0).get(0);
        TraceProposal proposal = bringIn.propose(trace, 0, run);
        bringIn.save(proposal, proposal.taken(), "", "brought in").orThrow();
        return new Brought(trace, run);
    }

    private BroughtTrace read(String name, TraceAnswers said) {
        return read(new HeldFile(name, shipped(name)), said);
    }

    private BroughtTrace read(HeldFile file, TraceAnswers said) {
        Entry<Run> any = desk.view().facts().of(Run.class).all().get(0);
        return bringIn.read(file, said, bringIn.settings(any.fact().engine()), true, bytes -> true)
                .orThrow();
    }

    private List<Entry<Trace>> traces() {
        return desk.view().facts().of(Trace.class).inForce().toList();
    }

    private List<TraceMark> marks(TraceMarkKind kind) {
        return desk.view().facts().of(TraceMark.class).where(mark -> mark.kind() == kind).stream()
                .map(Entry::fact)
                .toList();
    }

    private static List<String> sentences(List<Problem> problems) {
        Texts texts = Texts.in(Locale.UK);
        Problems words = new Problems(texts, new Measures(texts, Units.METRIC));
        return problems.stream()
                .map(words::happened)
                .map(said -> said.replace('\u00a0', ' ').replace('\u202f', ' '))
                .toList();
    }

    private static byte[] shipped(String name) {
        try {
            return Files.readAllBytes(FILES.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String unpacked(String name) throws IOException {
        try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(shipped(name)))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
