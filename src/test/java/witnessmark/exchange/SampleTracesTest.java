package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.LoggerFigures;
import witnessmark.domain.LoggerForm;
import witnessmark.domain.OverRev;
import witnessmark.domain.PartKind;
import witnessmark.domain.RevExponent;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.TraceAnswers;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.sample.FixedToday;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleViews;
import witnessmark.trace.kept.Bytes;
import witnessmark.trace.kept.KeptReader;

/**
 * The traces of the sample season are what the program writes when somebody brings the logger's files in, one after the
 * other; {@code -DupdateGolden=true} brings them in anew. The file of 5 July waits for somebody to say its rate.
 */
class SampleTracesTest {
    private static final Path FILES = SampleBooks.FOLDER.resolve("traces");
    private static final String WAITS = "2026-07-05_57_race2.csv.gz";
    private static final String NOT_BELIEVED = "2026-03-21_57_run3.csv.gz";
    private static final Map<String, String> NOTES = Map.of(
            NOT_BELIEVED,
            "oil pressure at nothing twice: the wire at the bulkhead",
            "2026-05-03_41_race1.csv.gz",
            "missed down-change on lap 9",
            "2026-05-24_41_race1.csv.gz",
            "hose off on lap 6; the water sensor stood in steam from then on",
            "2026-10-04_41_race.csv.gz",
            "the logger's clock was not set");
    private static final Set<Class<? extends Fact>> KINDS =
            Set.of(Trace.class, TraceMark.class, LoggerForm.class, LoggerFigures.class, RevExponent.class);

    /** What belongs to each part of the sample, in the order in which it is told. */
    private static final Map<Path, List<Entry<?>>> MADE = new LinkedHashMap<>();

    private static final Map<String, Kept> BYTES = new HashMap<>();
    private static final List<TraceProposal> PROPOSALS = new ArrayList<>();
    private static Facts end = Facts.none();

    @TempDir
    Path place;

    @BeforeAll
    static void bringThemIn() throws IOException {
        CsvSeasonFolders folders = new CsvSeasonFolders();
        MemoryLogbook book = new MemoryLogbook(Facts.none());
        Desk desk = new Desk(book, new FixedToday(SampleViews.WINTER), "Team engineer");
        for (Path part : parts()) {
            List<Entry<?>> rows = folders.read(part, book.facts()).orThrow().stream()
                    .filter(row -> !KINDS.contains(row.fact().getClass()))
                    .toList();
            desk.write("told", rows).orThrow();
            List<Entry<?>> made = new ArrayList<>();
            if (part.equals(SampleBooks.FOLDER)) {
                made.addAll(settings(book.facts()));
                desk.write("as the builder wrote", made).orThrow();
            }
            for (String file : files()) {
                LocalDate day = LocalDate.parse(file.substring(0, 10));
                boolean of = rows.stream()
                        .anyMatch(row -> row.fact() instanceof Run run
                                && run.start().day().equals(day));
                if (of && !file.equals(WAITS)) {
                    made.addAll(broughtIn(desk, file));
                }
            }
            MADE.put(part, made);
        }
        end = book.facts();
    }

    private static List<Entry<?>> broughtIn(Desk desk, String file) throws IOException {
        LocalDate day = LocalDate.parse(file.substring(0, 10));
        BringInTrace bringIn = new BringInTrace(desk, new CountedIds(day));
        LoggerFile shipped = new Shipped(FILES.resolve(file));
        Entry<Engine> any = desk.view().facts().of(Engine.class).all().get(0);
        BroughtTrace trace = bringIn.read(shipped, TraceAnswers.none(), bringIn.settings(any.id()), true, bytes -> true)
                .orThrow();
        assertThat(bringIn.isSure(trace, 0)).as("%s finds its run", file).isTrue();
        TraceProposal proposal =
                bringIn.propose(trace, 0, bringIn.runs(trace, 0).get(0));
        PROPOSALS.add(proposal);
        Facts before = desk.view().facts();
        bringIn.save(proposal, proposal.taken(), NOTES.getOrDefault(file, ""), "a trace brought in")
                .orThrow();
        Kept kept = trace.kept();
        assertThat(kept).isNotNull();
        BYTES.put(kept.sha256(), kept);
        Facts after = desk.view().facts();
        assertThat(after.of(OverRev.class).size())
                .as("the one over-rev stands there already")
                .isEqualTo(before.of(OverRev.class).size());
        return Stream.of(Trace.class, TraceMark.class, LoggerForm.class)
                .<Entry<?>>flatMap(kind -> news(before, after, kind).stream())
                .toList();
    }

    private static <F extends Fact> List<Entry<F>> news(Facts before, Facts after, Class<F> kind) {
        return after.of(kind).all().stream()
                .filter(entry -> before.of(kind).find(entry.id()).isEmpty())
                .toList();
    }

    /** Design 14.1 and 14.2: from where the engine counts as running and under load, and its hot oil pressure. */
    private static List<Entry<?>> settings(Facts facts) {
        Id<EngineDesign> design = facts.of(EngineDesign.class).all().get(0).id();
        CountedIds ids = new CountedIds(LocalDate.of(2026, 1, 15));
        return List.of(
                made(
                        ids,
                        new LoggerFigures(
                                design,
                                new EngineSpeed(500),
                                new EngineSpeed(3000),
                                new EngineSpeed(7500),
                                new Pressure(50_000),
                                new EngineSpeed(5000),
                                null,
                                null,
                                null,
                                "builder's sheet of 2026-01-15")),
                made(
                        ids,
                        new RevExponent(
                                design,
                                PartKind.VALVE_SPRINGS,
                                new EngineSpeed(8000),
                                400,
                                "valve maker V1, letter of 2025-12-04")));
    }

    private static <F extends Fact> Entry<F> made(Ids ids, F fact) {
        return new Entry<>(ids.next(), fact, Standing.IN_FORCE, null, 1);
    }

    @Test
    void each_part_of_the_sample_has_what_the_program_would_have_written() throws IOException {
        if (Boolean.getBoolean("updateGolden")) {
            ship();
        }
        Facts facts = Facts.none();
        for (Map.Entry<Path, List<Entry<?>>> part : MADE.entrySet()) {
            List<Entry<?>> rows =
                    new CsvSeasonFolders().read(part.getKey(), facts).orThrow();
            facts = facts.with(rows);
            assertThat(rows.stream()
                            .filter(row -> KINDS.contains(row.fact().getClass()))
                            .map(SampleTracesTest::comparable)
                            .toList())
                    .as("%s", part.getKey())
                    .containsExactlyInAnyOrderElementsOf(part.getValue().stream()
                            .map(SampleTracesTest::comparable)
                            .toList());
        }
    }

    /** Packed bytes differ from one zip library to the next; what is in them does not. */
    private static List<String> comparable(Entry<?> entry) {
        String text = entry.fact().toString();
        String kept = entry.fact().kept();
        return List.of(entry.id().text(), kept == null ? text : text.replace(kept, "kept"));
    }

    @Test
    void the_samples_kept_are_those_of_the_files() throws Exception {
        long bytes = 0;
        Facts facts = Facts.none();
        for (Path part : parts()) {
            List<Entry<?>> rows = new CsvSeasonFolders().read(part, facts).orThrow();
            facts = facts.with(rows);
            for (Entry<?> row : rows) {
                if (row.fact() instanceof Trace trace) {
                    Kept shipped =
                            SampleBooks.kept(part).of(trace.kept()).orThrow().orElseThrow();
                    bytes += shipped.size();
                    assertThat(samples(shipped))
                            .as(trace.name())
                            .isEqualTo(samples(BYTES.values().stream()
                                    .filter(kept ->
                                            kept.sha256().equals(madeOf(trace).kept()))
                                    .findFirst()
                                    .orElseThrow()));
                }
            }
        }
        assertThat(bytes).isBetween(100_000L, 3L << 20);
    }

    private static Trace madeOf(Trace shipped) {
        return end.of(Trace.class)
                .inForce()
                .map(Entry::fact)
                .filter(made -> made.name().equals(shipped.name()))
                .findFirst()
                .orElseThrow();
    }

    private static List<Object> samples(Kept kept) throws Exception {
        KeptReader reader = KeptReader.open(Bytes.of(kept.bytes()));
        List<Object> all = new ArrayList<>(List.of(reader.columns()));
        for (int column = 0; column < reader.columns().size(); column++) {
            all.add(Arrays.hashCode(reader.samples(0, column, 0, Long.MAX_VALUE).values()));
        }
        return all;
    }

    /** Every life of the sample goes by its runs: a trace that is taken whole changes none of their figures. */
    @Test
    void what_a_trace_says_is_what_its_run_is_written_down_with() {
        assertThat(PROPOSALS).hasSize(9).allSatisfy(proposal -> {
            assertThat(proposal.problems()).as(proposal.trace().name()).isEmpty();
            Run run = proposal.run().fact();
            Map<TraceField, Object> says = new HashMap<>(proposal.figures());
            if (proposal.trace().name().equals(NOT_BELIEVED)) {
                assertThat(run.oilPressure()).isNull();
                assertThat(says.remove(TraceField.OIL_PRESSURE)).isEqualTo(new Pressure(450_000));
            }
            says.forEach((field, figure) -> assertThat(figure)
                    .as("%s of %s", field, proposal.trace().name())
                    .isEqualTo(own(run, field)));
            assertThat(says.keySet())
                    .as(proposal.trace().name())
                    .contains(TraceField.RUNNING, TraceField.LOADED, TraceField.HIGH_SPEED, TraceField.HIGHEST)
                    .contains(TraceField.DISTANCE, TraceField.WATER, TraceField.HEAT_CYCLES, TraceField.OVER_REVS);
            assertThat(proposal.trace().parts().get(0).laps()).isEqualTo(run.laps());
        });
    }

    private static Object own(Run run, TraceField field) {
        return switch (field) {
            case START -> run.start();
            case RUNNING -> run.running();
            case LOADED -> run.loaded();
            case HIGH_SPEED -> run.highSpeed();
            case DISTANCE -> run.distance();
            case HEAT_CYCLES -> run.heatCycles();
            case PULLS -> run.pulls();
            case OVER_REVS -> run.overRevs();
            case HIGHEST -> run.highest();
            case WATER -> run.waterHighest();
            case OIL_TEMPERATURE -> run.oilHighest();
            case OIL_PRESSURE -> run.oilPressure();
        };
    }

    private void ship() throws IOException {
        Facts facts = Facts.none();
        for (Map.Entry<Path, List<Entry<?>>> part : MADE.entrySet()) {
            List<Entry<?>> rows = new ArrayList<>(
                    new CsvSeasonFolders().read(part.getKey(), facts).orThrow());
            rows.removeIf(row -> KINDS.contains(row.fact().getClass()));
            rows.addAll(part.getValue());
            facts = facts.with(rows);
            Path whole = place.resolve("whole" + facts.of(Run.class).size());
            Set<String> names = new TreeSet<>();
            part.getValue().stream()
                    .map(row -> row.fact().kept())
                    .filter(Objects::nonNull)
                    .forEach(names::add);
            new CsvSeasonFolders()
                    .write(facts, name -> Outcome.worked(Optional.ofNullable(BYTES.get(name))), whole)
                    .orThrow();
            place(part.getKey(), whole, part.getValue(), names);
        }
    }

    /** Puts the tables of the traces into a part, each with its own rows only, and what is kept beside them. */
    private static void place(Path part, Path whole, List<Entry<?>> own, Set<String> names) throws IOException {
        SeasonIndex before = SeasonIndex.read(part, new Problems()).orThrow();
        if (own.isEmpty() && before.kept().isEmpty()) {
            return;
        }
        for (RecordType<?> type : RecordTypes.all()) {
            if (KINDS.contains(type.kind())) {
                List<String> ids = own.stream()
                        .filter(row -> type.kind().isInstance(row.fact()))
                        .map(row -> row.id().text())
                        .toList();
                Path to = part.resolve(type.file());
                Files.deleteIfExists(to);
                if (!ids.isEmpty()) {
                    List<String> lines = Files.readAllLines(whole.resolve(type.file()));
                    lines.subList(1, lines.size())
                            .removeIf(line -> !ids.contains(line.substring(0, line.indexOf(','))));
                    Files.writeString(to, String.join("\n", lines) + "\n");
                }
            }
        }
        Path kept = part.resolve("kept");
        Files.createDirectories(kept);
        try (Stream<Path> old = Files.list(kept)) {
            for (Path file : old.toList()) {
                Files.delete(file);
            }
        }
        Map<String, Long> sizes = new LinkedHashMap<>();
        for (String name : names) {
            Files.copy(whole.resolve("kept").resolve(name), kept.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            sizes.put(name, Files.size(kept.resolve(name)));
        }
        if (names.isEmpty()) {
            Files.delete(kept);
        }
        Map<String, Integer> rows = new LinkedHashMap<>();
        Map<String, String> digests = new LinkedHashMap<>();
        for (RecordType<?> type : RecordTypes.all()) {
            Path table = part.resolve(type.file());
            if (Files.exists(table)) {
                int count = KINDS.contains(type.kind())
                        ? (int) own.stream()
                                .filter(row -> type.kind().isInstance(row.fact()))
                                .count()
                        : before.rows().get(type.file());
                rows.put(type.file(), count);
                if (!before.digests().isEmpty()) {
                    digests.put(type.file(), Digests.of(table));
                }
            }
        }
        Files.writeString(
                part.resolve(SeasonIndex.FILE), new SeasonIndex(rows, digests, sizes).text(), StandardCharsets.UTF_8);
    }

    private static List<Path> parts() throws IOException {
        try (Stream<Path> later = Files.list(SampleBooks.FOLDER.resolve("later"))) {
            return Stream.concat(
                            Stream.of(SampleBooks.FOLDER),
                            later.filter(Files::isDirectory).sorted())
                    .toList();
        }
    }

    private static List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(FILES)) {
            return all.map(file -> file.getFileName().toString())
                    .sorted(Comparator.naturalOrder())
                    .toList();
        }
    }

    /** A file of the sample as it lies there. */
    private record Shipped(Path file) implements LoggerFile {
        @Override
        public String name() {
            return file.getFileName().toString();
        }

        @Override
        public long size() throws IOException {
            return Files.size(file);
        }

        @Override
        public InputStream open() throws IOException {
            return Files.newInputStream(file);
        }
    }

    /** Ids of the evening of a day, one after the other (UUID version 7, RFC 9562). */
    private static final class CountedIds implements Ids {
        private final long millis;
        private int number;

        CountedIds(LocalDate day) {
            this.millis =
                    day.atTime(19, 30).atZone(SampleViews.ZONE).toInstant().toEpochMilli();
        }

        @Override
        public <F extends Fact> Id<F> next() {
            number++;
            long most = (millis + number) << 16 | 0x7000 | (0x7ace * (long) number & 0xfff);
            long least =
                    0x8000_0000_0000_0000L | (0x2b99_13a7_45c1L * (millis + 31L * number) & 0x3fff_ffff_ffff_ffffL);
            return new Id<>(new UUID(most, least));
        }
    }
}
