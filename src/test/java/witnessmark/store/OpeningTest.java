package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What cannot be opened gets a sentence and stays as it is, and so does everything that lies beside it. */
class OpeningTest {
    private static final int PAGE = 4_096;

    @TempDir
    private Path folder;

    private TestLogbooks logbooks;

    @BeforeEach
    void place() throws IOException {
        logbooks = new TestLogbooks(folder.resolve("home"));
        Files.createDirectories(folder.resolve("place"));
    }

    private Path place(String name) {
        return folder.resolve("place").resolve(name);
    }

    /** Nothing in the place may differ after it was tried. */
    private Outcome<Logbook> untouched(Path file) throws IOException {
        FolderState before = FolderState.of(folder.resolve("place"));
        Outcome<Logbook> opened = logbooks.files.open(file);
        if (opened.didWork()) {
            opened.orThrow().close();
        }
        assertThat(FolderState.of(folder.resolve("place"))).isEqualTo(before);
        return opened;
    }

    interface Made {
        void at(Path file) throws Exception;
    }

    static Stream<Object[]> others() {
        return Stream.of(
                other("an empty file", "an empty file", Files::createFile),
                other("a note", "a file of another kind", file -> Files.writeString(file, "Springs at 12 h.\n")),
                other(
                        "a long text",
                        "a file of another kind",
                        file -> Files.writeString(file, "Springs, ".repeat(9_999))),
                other("a picture", "a file of another kind", OpeningTest::picture),
                other("a picture under our name", "a file of another kind", OpeningTest::picture),
                other("a page of zeros", "a file of another kind", file -> Files.write(file, new byte[PAGE])),
                other("a file of four terabytes", "a file of another kind", OpeningTest::sparse),
                other("another database", "a database that is no logbook", file -> database(file, 0)),
                other("a database of somebody's", "a database of another program", file -> database(file, 0x47504B47)),
                other("a folder", "a folder", Files::createDirectory),
                other("a pipe", "no ordinary file", OpeningTest::pipe));
    }

    private static Object[] other(String name, String instead, Made made) {
        return new Object[] {name, instead, made};
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("others")
    void what_is_no_logbook_is_called_what_it_is_and_stays_as_it_is(String name, String instead, Made made)
            throws Exception {
        Path file = place(name + ".witness");
        made.at(file);
        Files.writeString(place(name + ".witness.lock"), "somebody else's\n");

        Outcome<Logbook> opened = untouched(file);

        assertThat(opened.didWork()).isFalse();
        assertThat(Sentences.only(opened, ProblemKind.NOT_A_LOGBOOK))
                .isEqualTo(
                        "'" + file + "' is not a logbook but " + instead + ". It is not opened, and it stays as it is."
                                + " Choose a logbook; the name of one usually ends in .witness.");
    }

    @Test
    void where_nothing_is_nothing_is_made() throws IOException {
        Outcome<Logbook> opened = untouched(place("gone.witness"));

        assertThat(Sentences.only(opened, ProblemKind.LOGBOOK_GONE)).contains("gone.witness", "backups");
    }

    @Test
    void a_newer_logbook_is_read_and_not_written() throws Exception {
        Path file = place("newer.witness");
        Entry<Car> car = Garage.made(new Car("7", ""));
        make(file, car);
        statements(
                file,
                "ALTER TABLE car ADD COLUMN colour TEXT",
                "CREATE TABLE dyno_pull (id TEXT) STRICT",
                "PRAGMA user_version = 99");
        FolderState before = FolderState.of(folder.resolve("place"));

        Outcome<Logbook> opened = logbooks.files.open(file);

        assertThat(Sentences.only(opened, ProblemKind.LOGBOOK_NEWER)).contains("form 99");
        try (Logbook logbook = opened.orThrow()) {
            assertThat(logbook.readOnly()).isEqualTo(opened.problems().stream().findFirst());
            assertThat(logbook.facts().of(Car.class).all()).hasSize(1);
            Outcome<Written> written = TestLogbooks.write(logbook, Garage.again(car, new Car("8", "")));
            assertThat(written.didWork()).isFalse();
            Sentences.only(written, ProblemKind.OPEN_READ_ONLY);
        }
        assertThat(FolderState.of(folder.resolve("place"))).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "DROP TRIGGER car_amended",
                "CREATE TRIGGER stow AFTER INSERT ON car BEGIN SELECT 1; END",
                "CREATE VIEW lives AS SELECT * FROM run",
                "ALTER TABLE run ADD COLUMN mine TEXT",
                "ALTER TABLE car RENAME TO carriage"
            })
    void a_logbook_whose_tables_another_program_changed_is_not_opened(String change) throws Exception {
        Path file = place("altered.witness");
        make(file);
        statements(file, change);

        assertThat(Sentences.only(untouched(file), ProblemKind.LOGBOOK_ALTERED)).contains("altered.witness");
    }

    @ParameterizedTest(name = "cut to {0} bytes")
    @ValueSource(ints = {1, 16, 99, 100, 2_000, 4_096, 40_960, -1})
    void a_logbook_whose_end_is_missing_is_not_opened(int kept) throws Exception {
        Path file = place("short.witness");
        make(file);
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, kept < 0 ? whole.length + kept : kept));

        Outcome<Logbook> opened = untouched(file);

        assertThat(opened.didWork()).isFalse();
        assertThat(opened.problems())
                .extracting(Problem::kind)
                .containsExactly(kept == 1 ? ProblemKind.NOT_A_LOGBOOK : ProblemKind.LOGBOOK_DAMAGED);
        Sentences.complete(opened.problems());
    }

    /**
     * A page of the file overwritten with noise. Where the page held nothing the file is as good as before, so what
     * counts is that no opened logbook says anything other than what was written.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void a_page_of_noise_is_seen_or_does_no_harm(long seed) throws Exception {
        Random random = new Random(seed);
        Path good = folder.resolve("good.witness");
        make(
                good,
                new RandomFacts(seed).oneOfEach(witnessmark.domain.Facts.none()).toArray(new Entry<?>[0]));
        byte[] whole = Files.readAllBytes(good);
        List<Entry<?>> truth = all(good);
        int refused = 0;
        for (int i = 0; i < 12; i++) {
            byte[] damaged = whole.clone();
            int page = random.nextInt(whole.length / PAGE);
            byte[] noise = new byte[PAGE - 100];
            random.nextBytes(noise);
            System.arraycopy(noise, 0, damaged, page * PAGE + 100, noise.length);
            Path file = place("noise-" + i + ".witness");
            Files.write(file, damaged);

            Outcome<Logbook> opened = untouchedUnlessOpened(file, damaged);

            if (opened.didWork()) {
                try (Logbook logbook = opened.orThrow()) {
                    assertThat(all(logbook).equals(truth) || !logbook.verify().isEmpty())
                            .as("page %d read wrong in silence", page + 1)
                            .isTrue();
                }
            } else {
                refused++;
                assertThat(opened.problems())
                        .as("page %d", page + 1)
                        .extracting(Problem::kind)
                        .isSubsetOf(
                                ProblemKind.LOGBOOK_DAMAGED, ProblemKind.LOGBOOK_ALTERED, ProblemKind.NOT_A_LOGBOOK);
                Sentences.complete(opened.problems());
            }
        }
        assertThat(refused).isPositive();
    }

    private Outcome<Logbook> untouchedUnlessOpened(Path file, byte[] bytes) throws IOException {
        Outcome<Logbook> opened = logbooks.files.open(file);
        if (!opened.didWork()) {
            assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
            assertThat(place(file.getFileName() + "-wal")).doesNotExist();
            assertThat(place(file.getFileName() + "-shm")).doesNotExist();
            assertThat(place(file.getFileName() + ".lock")).doesNotExist();
        }
        return opened;
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "two words.witness",
                "Müller Ærø 東京.witness",
                "the driver's \"own\".witness",
                "100 % & more?mode=ro#1;x+y.witness",
                "file:colon.witness",
                "no ending",
                ".hidden.witness"
            })
    void a_name_may_hold_whatever_a_file_name_may(String name) throws Exception {
        Path file = place(name);
        Entry<Car> car = Garage.made(new Car("7", ""));
        make(file, car);
        try (Logbook logbook = logbooks.files.open(file).orThrow()) {
            assertThat(logbook.path()).isEqualTo(file.toRealPath());
            assertThat(logbook.readOnly()).isEmpty();
            TestLogbooks.write(logbook, Garage.again(car, new Car("8", ""))).orThrow();
            Path copy = logbook.backUp().orThrow();
            try (Logbook backup = logbooks.files.open(copy).orThrow()) {
                assertThat(backup.facts().of(Car.class).get(car.id()).name()).isEqualTo("8");
            }
        }
        assertThat(FolderState.of(folder.resolve("place")).files()).containsOnlyKeys(name);
    }

    @Test
    void a_logbook_is_found_behind_a_link() throws Exception {
        Path file = place("true.witness");
        make(file);
        Path link = Files.createSymbolicLink(folder.resolve("link.witness"), file);
        try (Logbook logbook = logbooks.files.open(link).orThrow()) {
            assertThat(logbook.path()).isEqualTo(file.toRealPath());
            assertThat(place("true.witness.lock")).exists();
        }
    }

    @Test
    void a_new_logbook_is_not_made_over_another_nor_beside_what_another_left() throws IOException {
        Files.writeString(place("a.witness"), "mine");
        Files.writeString(place("b.witness-wal"), "writes of a logbook that was here");
        FolderState before = FolderState.of(folder.resolve("place"));

        assertThat(Sentences.only(logbooks.files.create(place("a.witness")), ProblemKind.FILE_EXISTS))
                .contains("a.witness");
        assertThat(Sentences.only(logbooks.files.create(place("b.witness")), ProblemKind.FILE_EXISTS))
                .contains("b.witness-wal");
        assertThat(Sentences.only(
                        logbooks.files.create(place("no such folder").resolve("c.witness")), ProblemKind.NO_SUCH_FILE))
                .contains("no such folder");
        assertThat(FolderState.of(folder.resolve("place"))).isEqualTo(before);
    }

    private void make(Path file, Entry<?>... entries) {
        try (Logbook logbook = logbooks.files.create(file).orThrow()) {
            if (entries.length > 0) {
                TestLogbooks.write(logbook, entries).orThrow();
            }
        }
    }

    private List<Entry<?>> all(Path file) {
        try (Logbook logbook = logbooks.files.open(file).orThrow()) {
            return all(logbook);
        }
    }

    private static List<Entry<?>> all(Logbook logbook) {
        return RecordTypes.all().stream()
                .flatMap(type -> logbook.facts().of(type.kind()).all().stream())
                .<Entry<?>>map(entry -> entry)
                .toList();
    }

    private static void statements(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection(Connections.address(file));
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.executeUpdate(each);
            }
        }
    }

    private static void database(Path file, int applicationId) throws SQLException {
        statements(file, "CREATE TABLE car (id TEXT)", "PRAGMA application_id = " + applicationId);
    }

    private static void picture(Path file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(64, 64, BufferedImage.TYPE_INT_RGB), "png", out);
        Files.write(file, out.toByteArray());
    }

    private static void sparse(Path file) throws IOException {
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.seek(4L << 40);
            sparse.write(
                    ByteBuffer.wrap("end".getBytes(StandardCharsets.US_ASCII)).array());
        }
    }

    private static void pipe(Path file) throws IOException, InterruptedException {
        assertThat(new ProcessBuilder("mkfifo", file.toString()).start().waitFor())
                .isZero();
    }
}
