package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.ProblemKind;

/**
 * A file from somewhere is not trusted: what it could ask SQLite for is cut before anything of it is read
 * (sqlite.org/security.html, "Untrusted SQLite Database Files").
 */
class UntrustedFileTest {
    @TempDir
    private Path folder;

    private TestLogbooks logbooks;

    @BeforeEach
    void make() {
        logbooks = new TestLogbooks(folder);
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        }
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"trusted_schema, 0", "cell_size_check, 1", "mmap_size, 0", "foreign_keys, 1"})
    void every_connection_is_set_as_for_a_file_of_a_stranger(String pragma, long value) throws SQLException {
        Connections connections = new Connections(new Sql());
        try (Database writer = connections.writer(logbooks.file());
                Database reader = connections.reader(logbooks.file());
                Database frozen = connections.frozen(logbooks.file())) {
            for (Database database : List.of(writer, reader, frozen)) {
                assertThat(number(database, "PRAGMA " + pragma)).isEqualTo(value);
            }
        }
    }

    @Test
    void no_extension_is_loaded_and_no_second_file_attached() throws SQLException {
        try (Database database = new Connections(new Sql()).frozen(logbooks.file())) {
            assertThatThrownBy(() -> number(database, "SELECT load_extension('/tmp/anything')"))
                    .isInstanceOf(SQLException.class);
            number(database, "SELECT 1");
            execute(database, "ATTACH ':memory:' AS one"); // the copy into a file needs that one
            assertThatThrownBy(() -> execute(database, "ATTACH ':memory:' AS two"))
                    .isInstanceOf(SQLException.class);
        }
    }

    @Test
    void what_is_larger_or_longer_than_a_logbook_needs_is_refused() throws SQLException {
        try (Database database = new Connections(new Sql()).frozen(logbooks.file())) {
            assertThatThrownBy(() -> number(database, "SELECT length(zeroblob(70000000))"))
                    .isInstanceOf(SQLException.class);
            assertThatThrownBy(() -> number(database, "SELECT 1 -- " + "x".repeat(250_000)))
                    .isInstanceOf(SQLException.class);
            assertThatThrownBy(() -> number(database, "SELECT " + "(".repeat(60) + "1" + "+1)".repeat(60)))
                    .isInstanceOf(SQLException.class);
        }
    }

    @Test
    void work_without_end_is_stopped_when_its_time_is_over() throws SQLException {
        try (Database database = new Connections(new Sql()).frozen(logbooks.file())) {
            database.within(Duration.ofMillis(200));
            assertThatThrownBy(() -> number(
                            database,
                            "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT count(*) FROM n"))
                    .isInstanceOfSatisfying(
                            SQLException.class,
                            stopped -> assertThat(Sentences.of(Faults.reading(logbooks.file(), stopped)))
                                    .contains("takes longer to read than any logbook would"));
            database.anyTime();
            assertThat(number(database, "SELECT 1")).isEqualTo(1);
        }
    }

    /** A view that never ends, under the name of a table: opening does not ask it, salvaging is stopped by no more than it. */
    @Test
    void the_schema_is_compared_before_anything_else_is_read() throws Exception {
        try (Connection connection = DriverManager.getConnection(Connections.address(logbooks.file()));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("ALTER TABLE car RENAME TO carriage");
            statement.executeUpdate("CREATE VIEW car AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n)"
                    + " SELECT i AS id FROM n");
        }
        Sentences.only(logbooks.files.open(logbooks.file()), ProblemKind.LOGBOOK_ALTERED);
        assertThat(logbooks.files.copies().check(logbooks.file()))
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.LOGBOOK_ALTERED);
    }

    @Test
    void files_are_for_their_owner_alone() throws Exception {
        Path stick = Files.createDirectories(folder.resolve("stick"));
        try (Logbook logbook = logbooks.open()) {
            TestLogbooks.write(logbook, Garage.made(new Car("8", ""))).orThrow();
            logbook.backUp().orThrow();
            logbook.secondPlace().begin(stick).orThrow();
            logbook.copyTo(folder.resolve("copy.witness")).orThrow();
            Path backup = logbooks.files.copies().kept().get(0).file();
            logbooks.files
                    .copies()
                    .restore(backup, folder.resolve("restored.witness"))
                    .orThrow();
            try (Stream<Path> all = Files.walk(folder)) {
                assertThat(all.filter(Files::isRegularFile))
                        .isNotEmpty()
                        .allSatisfy(file -> assertThat(Files.getPosixFilePermissions(file))
                                .as("%s", file)
                                .doesNotContain(
                                        PosixFilePermission.GROUP_READ,
                                        PosixFilePermission.OTHERS_READ,
                                        PosixFilePermission.GROUP_WRITE,
                                        PosixFilePermission.OTHERS_WRITE));
            }
        }
    }

    private static long number(Database database, String sql) throws SQLException {
        try (Statement statement = connection(database).createStatement();
                var rows = statement.executeQuery(sql)) {
            return rows.next() ? rows.getLong(1) : 0;
        }
    }

    private static void execute(Database database, String sql) throws SQLException {
        try (Statement statement = connection(database).createStatement()) {
            statement.execute(sql);
        }
    }

    private static Connection connection(Database database) throws SQLException {
        return database.statement("file/user_version").getConnection();
    }
}
