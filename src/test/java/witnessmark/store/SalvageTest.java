package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Standing;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookCopies.SalvageWords;
import witnessmark.logbook.port.LogbookCopies.Salvaged;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What can be read of a spoilt logbook goes into a new one: true, or struck out, or told to be missing. */
class SalvageTest {
    private static final SalvageWords WORDS =
            new SalvageWords("Ada, salvaging", "salvaged from a damaged file", "salvaged, not proven");

    @TempDir
    private Path folder;

    private TestLogbooks logbooks;
    private Map<UUID, Entry<?>> truth;

    @BeforeEach
    void make() {
        logbooks = new TestLogbooks(folder);
        RandomFacts random = new RandomFacts(21);
        try (Logbook logbook = logbooks.create()) {
            for (int i = 0;
                    i < 12;
                    i++) { // as much as a season holds, so that the words of its form are a small part of it
                TestLogbooks.write(logbook, random.oneOfEach(logbook.facts())).orThrow();
            }
            for (int i = 0; i < 30; i++) {
                TestLogbooks.write(logbook, List.of(random.edited(random.any(logbook.facts()), logbook.facts())));
            }
            truth = all(logbook.facts());
        }
    }

    @Test
    void of_a_whole_logbook_everything_and_marked_in_its_history() throws Exception {
        String before = FolderState.hash(logbooks.file());
        Salvaged salvaged = salvage(logbooks.file(), "new").orThrow();
        assertThat(salvaged.left()).isEmpty();
        assertThat(salvaged.doubtful()).isZero();
        assertThat(salvaged.whole()).isEqualTo(truth.size());
        assertThat(FolderState.hash(logbooks.file())).as("the old one stays").isEqualTo(before);
        try (Logbook made = logbooks.files.open(salvaged.logbook()).orThrow()) {
            assertSame(made.facts());
            assertThat(made.verify()).isEmpty();
            assertThat(made.history()).extracting(Amendment::who).containsOnly("Ada, salvaging");
        }
    }

    /**
     * Pages overwritten with noise. Whatever is in force in the new logbook is as it was written; of every record written
     * it says that it is there, or doubtful, or missing, or that there are changes nobody can read.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void what_counts_is_true_and_nothing_is_missing_in_silence(long seed) throws Exception {
        java.util.Random random = new java.util.Random(seed);
        int pages = (int) (Files.size(logbooks.file()) / 4_096);
        int whole = 0;
        for (int i = 0; i < 6; i++) {
            Path damaged = Files.copy(logbooks.file(), folder.resolve("damaged-" + seed + "-" + i + ".witness"));
            int bad = 1 + random.nextInt(3);
            List<Integer> torn = new ArrayList<>();
            if (i % 2 == 1) { // SQLite reads nothing, and every page is looked at by itself
                torn.add(1);
            }
            for (int k = 0; k < bad; k++) {
                torn.add(2 + random.nextInt(pages - 1));
            }
            for (int page : torn) {
                RestoringTest.noise(damaged, page);
            }
            Outcome<Salvaged> outcome = salvage(damaged, "from-" + seed + "-" + i);
            if (!outcome.didWork()) {
                Sentences.complete(outcome.problems());
                continue;
            }
            Salvaged salvaged = outcome.orThrow();
            Sentences.complete(salvaged.left());
            try (Logbook made = logbooks.files.open(salvaged.logbook()).orThrow()) {
                Map<UUID, Entry<?>> there = all(made.facts());
                whole += salvaged.whole();
                int missing = 0;
                for (Map.Entry<UUID, Entry<?>> written : truth.entrySet()) {
                    Entry<?> now = there.get(written.getKey());
                    if (now == null) {
                        missing++;
                    } else if (now.struckBecause() == null
                            || !now.struckBecause().equals(WORDS.doubtful())) {
                        assertThat(now.fact())
                                .as("pages %s", torn)
                                .isEqualTo(written.getValue().fact());
                        assertThat(now.standing()).isEqualTo(written.getValue().standing());
                    }
                }
                long told = salvaged.left().stream()
                        .filter(problem -> problem.kind() == ProblemKind.NOT_SALVAGED)
                        .count();
                boolean unread =
                        salvaged.left().stream().anyMatch(problem -> problem.kind() == ProblemKind.CHANGES_UNREADABLE);
                assertThat(missing == told || missing > told && unread)
                        .as("pages %s: %d missing, %d told", torn, missing, told)
                        .isTrue();
                assertThat(made.verify()).isEmpty();
            }
        }
        assertThat(whole).as("a few pages do not cost the logbook").isGreaterThan(truth.size() * 3);
    }

    /**
     * The list of tables lies on the first page and those it leads to; SQLite reads nothing without it
     * (sqlite.org/fileformat2.html, 2.6).
     */
    @Test
    void a_torn_list_of_tables_costs_no_record() throws Exception {
        for (int torn : new int[] {1, 2, 0}) {
            Path damaged = Files.copy(logbooks.file(), folder.resolve("listless-" + torn + ".witness"));
            for (int page : torn == 0
                    ? pagesOfTheList(damaged)
                    : List.of(torn == 1 ? 1 : pagesOfTheList(damaged).get(1))) {
                RestoringTest.noise(damaged, page);
            }
            String before = FolderState.hash(damaged);
            Salvaged salvaged = salvage(damaged, "listed-" + torn).orThrow();
            assertThat(salvaged.doubtful()).isZero();
            assertThat(salvaged.whole()).isEqualTo(truth.size());
            assertThat(salvaged.left()).extracting(Problem::kind).containsExactly(ProblemKind.CHANGES_UNREADABLE);
            assertThat(FolderState.hash(damaged)).as("the old one stays").isEqualTo(before);
            try (Logbook made = logbooks.files.open(salvaged.logbook()).orThrow()) {
                assertSame(made.facts());
                assertThat(made.verify()).isEmpty();
            }
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).noneMatch(path -> path.toString().contains(".pieces"));
        }
    }

    /** Scraps of noise all over, within rows and their headers, and no list of tables: what is torn is passed over. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void scraps_of_noise_in_every_corner_end_in_no_crash_and_nothing_false(long seed) throws Exception {
        java.util.Random random = new java.util.Random(seed);
        Path damaged = Files.copy(logbooks.file(), folder.resolve("scraps-" + seed + ".witness"));
        RestoringTest.noise(damaged, 1);
        int size = (int) Files.size(damaged);
        try (RandomAccessFile file = new RandomAccessFile(damaged.toFile(), "rw")) {
            for (int i = 0; i < 40; i++) {
                byte[] scrap = new byte[600];
                random.nextBytes(scrap);
                file.seek(4_096 + random.nextInt(size - 4_096 - scrap.length));
                file.write(scrap);
            }
        }
        Outcome<Salvaged> outcome = salvage(damaged, "of-scraps-" + seed);
        Sentences.complete(outcome.problems());
        if (outcome.didWork()) {
            try (Logbook made = logbooks.files.open(outcome.orThrow().logbook()).orThrow()) {
                assertThat(all(made.facts()))
                        .isNotEmpty()
                        .allSatisfy((id, entry) -> assertThat(entry.inForce()
                                        && !entry.fact().equals(truth.get(id).fact()))
                                .isFalse());
            }
        }
    }

    /** Last writes beside the file would be newer than its rows: nothing is taken for what it was then. */
    @Test
    void without_a_list_of_tables_rows_are_not_taken_from_behind_a_log() throws Exception {
        Path damaged = Files.copy(logbooks.file(), folder.resolve("logged.witness"));
        RestoringTest.noise(damaged, 1);
        Files.write(folder.resolve("logged.witness-wal"), new byte[4_152]);
        assertThat(salvage(damaged, "from logged").didWork()).isFalse();
    }

    private static List<Integer> pagesOfTheList(Path file) throws SQLException {
        List<Integer> pages = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection(Connections.address(file));
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT pageno FROM dbstat WHERE name = 'sqlite_schema' ORDER BY pageno")) {
            while (rows.next()) {
                pages.add(rows.getInt(1));
            }
        }
        return pages;
    }

    @Test
    void a_logbook_whose_tables_were_altered_is_read_without_what_was_put_in() throws Exception {
        statements(
                logbooks.file(),
                "CREATE TABLE loot (x TEXT)",
                "CREATE TRIGGER steal AFTER INSERT ON car BEGIN INSERT INTO loot VALUES (NEW.name); END",
                "CREATE VIEW lives AS SELECT * FROM run");
        assertThat(logbooks.files.open(logbooks.file()).problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.LOGBOOK_ALTERED);
        Salvaged salvaged = salvage(logbooks.file(), "clean").orThrow();
        try (Logbook made = logbooks.files.open(salvaged.logbook()).orThrow()) {
            assertSame(made.facts());
        }
    }

    @Test
    void a_record_changed_past_the_program_comes_back_as_its_history_says() throws Exception {
        Entry<Car> car = Garage.made(new Car("the seven", ""));
        try (Logbook logbook = logbooks.open()) {
            TestLogbooks.write(logbook, car).orThrow();
        }
        statements(
                logbooks.file(),
                "DROP TRIGGER car_amended",
                "UPDATE car SET name = 'the eight' WHERE name = 'the seven'");
        Salvaged salvaged = salvage(logbooks.file(), "put right").orThrow();
        assertThat(salvaged.doubtful()).isZero();
        try (Logbook made = logbooks.files.open(salvaged.logbook()).orThrow()) {
            assertThat(made.facts().of(Car.class).get(car.id()).name()).isEqualTo("the seven");
        }
    }

    @Test
    void a_record_with_neither_checksum_nor_history_is_struck_out_with_the_reason() throws Exception {
        Entry<Car> car = Garage.made(new Car("the seven", ""));
        try (Logbook logbook = logbooks.open()) {
            TestLogbooks.write(logbook, car).orThrow();
        }
        statements(
                logbooks.file(),
                "DROP TRIGGER car_amended",
                "DROP TRIGGER amendment_no_update",
                "UPDATE car SET name = 'the eight' WHERE name = 'the seven'",
                "UPDATE amendment SET after = '{}' WHERE record_id = '"
                        + car.id().text() + "'");
        Salvaged salvaged = salvage(logbooks.file(), "doubtful").orThrow();
        assertThat(salvaged.doubtful()).isEqualTo(1);
        assertThat(Sentences.complete(salvaged.left()))
                .anyMatch(line -> line.startsWith("The car 'the eight' can be read"));
        try (Logbook made = logbooks.files.open(salvaged.logbook()).orThrow()) {
            Entry<Car> now = made.facts().of(Car.class).find(car.id()).orElseThrow();
            assertThat(now.standing()).isEqualTo(Standing.STRUCK_OUT);
            assertThat(now.struckBecause()).isEqualTo(WORDS.doubtful());
        }
    }

    @Test
    void what_is_no_logbook_gives_a_sentence_and_no_file() throws Exception {
        Path text = Files.writeString(folder.resolve("text.witness"), "no database at all, but long enough ".repeat(9));
        Outcome<Salvaged> outcome = salvage(text, "from text");
        assertThat(outcome.didWork()).isFalse();
        Sentences.complete(outcome.problems());
        assertThat(folder.resolve("from text.witness")).doesNotExist();
        assertThat(salvage(logbooks.file(), "team").problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.FILE_EXISTS);
    }

    private Outcome<Salvaged> salvage(Path damaged, String to) {
        return logbooks.files.copies().salvage(damaged, folder.resolve(to + ".witness"), WORDS);
    }

    private void assertSame(Facts facts) {
        Map<UUID, Entry<?>> there = all(facts);
        assertThat(there.keySet()).isEqualTo(truth.keySet());
        there.forEach((id, entry) -> {
            assertThat(entry.fact()).isEqualTo(truth.get(id).fact());
            assertThat(entry.standing()).isEqualTo(truth.get(id).standing());
        });
    }

    private static Map<UUID, Entry<?>> all(Facts facts) {
        Map<UUID, Entry<?>> all = new HashMap<>();
        RecordTypes.all()
                .forEach(type -> facts.of(type.kind())
                        .all()
                        .forEach(entry -> all.put(entry.id().value(), entry)));
        return all;
    }

    private static void statements(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection(Connections.address(file));
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.executeUpdate(each);
            }
        }
    }
}
