package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * A file changed with another tool, its guards taken away: the check names what was changed. Each change is made within
 * a transaction on one connection, checked there, and rolled back.
 */
class TamperingTest {
    /** How many different changes each column of each table gets. */
    private static final int CHANGES = Integer.getInteger("tamperings", 1);

    private static final int TABLES_AT_ONCE = 6;

    private static final Logger LOG = LoggerFactory.getLogger(TamperingTest.class);

    @TempDir
    private Path folder;

    private Connection connection;
    private Database database;
    private Facts facts;

    @BeforeEach
    void make() throws SQLException {
        TestLogbooks logbooks = new TestLogbooks(folder);
        RandomFacts random = new RandomFacts(7);
        try (Logbook logbook = logbooks.create()) {
            for (int i = 0; i < 2; i++) {
                TestLogbooks.write(logbook, random.oneOfEach(logbook.facts())).orThrow();
            }
            for (int i = 0; i < 12; i++) {
                Entry<?> edited = random.edited(random.any(logbook.facts()), logbook.facts());
                TestLogbooks.write(logbook, List.of(edited)).orThrow();
            }
            facts = logbook.facts();
        }
        connection = Connections.unguarded().createConnection(Connections.address(logbooks.file()));
        for (String trigger : texts("SELECT name FROM sqlite_schema WHERE type = 'trigger'")) {
            run("DROP TRIGGER \"" + trigger + "\"");
        }
        run("PRAGMA ignore_check_constraints = ON");
        connection.setAutoCommit(false);
        database = new Database(connection, new Sql());
        assertThat(verified()).isEmpty();
    }

    @AfterEach
    void close() throws SQLException {
        connection.close();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1})
    void every_single_cell_of_every_record_that_was_changed_is_named(long seed) throws SQLException {
        Random random = new Random(seed);
        List<String> silent = new ArrayList<>();
        int made = 0;
        for (List<Cell> apart : tableByTable(random)) {
            for (int i = 0; i < CHANGES; i++) {
                List<Cell> changed = new ArrayList<>();
                for (Cell cell : apart) {
                    if (change(cell, random)) {
                        changed.add(cell);
                    }
                }
                made += changed.size();
                List<Problem> found = verified();
                for (Cell cell : changed) {
                    if (found.stream().noneMatch(problem -> isNamed(problem, cell.table()))) {
                        silent.add(cell + " = " + read(cell));
                    }
                }
                connection.rollback();
            }
        }
        assertThat(silent).as("of %d changes", made).isEmpty();
        assertThat(made).isGreaterThan(300 * CHANGES);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1})
    void every_single_cell_of_the_history_that_was_changed_is_named(long seed) throws SQLException {
        Random random = new Random(seed);
        List<String> silent = new ArrayList<>();
        for (int round = 0; round < 3; round++) {
            for (Cell cell : cells("amendment", random)) {
                for (int i = 0; i < CHANGES && change(cell, random); i++) {
                    if (verified().stream().noneMatch(TamperingTest::breaksTheChain)) {
                        silent.add(cell + " = " + read(cell));
                    }
                    connection.rollback();
                }
            }
        }
        assertThat(silent).isEmpty();
    }

    /** Any spelling that a lenient reader takes for the same value, and figures that overflow to it. */
    @Test
    void another_spelling_of_the_same_value_is_a_change_too() throws SQLException {
        for (String change : List.of(
                "id = upper(id)",
                "change_id = upper(change_id)",
                "record_id = upper(record_id)",
                "clock_tick = clock_tick + 4294967296",
                "schema_version = schema_version + 4294967296",
                "before = before || ' '",
                "after = replace(after, ',', ', ')",
                "hash = upper(hash)",
                "who = who || char(0)")) {
            run("UPDATE amendment SET " + change + " WHERE number = 5");
            assertThat(verified()).as(change).anyMatch(TamperingTest::breaksTheChain);
            connection.rollback();
        }
    }

    @Test
    void an_amendment_taken_out_is_missed_wherever_it_stood() throws SQLException {
        long last = database.number("amendment/last_of_device", "device-a");
        for (long number = 1; number <= last; number++) {
            run("DELETE FROM amendment WHERE number = " + number);
            List<Problem> found = verified();
            assertThat(found).as("number %d of %d", number, last).isNotEmpty();
            if (number < last) {
                assertThat(found).contains(Problem.of(ProblemKind.CHAIN_BROKEN, number + 1, "device-a"));
            }
            connection.rollback();
        }
    }

    @Test
    void amendments_put_in_another_order_are_named() throws SQLException {
        run("UPDATE amendment SET number = -4 WHERE number = 4");
        run("UPDATE amendment SET number = 4 WHERE number = 9");
        run("UPDATE amendment SET number = 9 WHERE number = -4");

        assertThat(verified())
                .contains(
                        Problem.of(ProblemKind.CHAIN_BROKEN, 4L, "device-a"),
                        Problem.of(ProblemKind.CHAIN_BROKEN, 9L, "device-a"));
    }

    @Test
    void a_record_put_in_or_taken_out_past_the_history_is_named() throws SQLException {
        run("INSERT INTO car SELECT 'f0000000-0000-7000-8000-000000000000', name || '!', note, standing,"
                + " struck_because, made_at_ms, made_by, 'nobody', rev, checksum FROM car LIMIT 1");
        assertThat(verified()).extracting(Problem::kind).contains(ProblemKind.RECORD_NOT_AS_WRITTEN);
        connection.rollback();

        run("DELETE FROM told_running");
        assertThat(verified())
                .filteredOn(problem -> problem.kind() == ProblemKind.RECORD_NOT_AS_WRITTEN)
                .hasSize(2);
    }

    @Test
    void two_records_with_their_content_exchanged_are_both_named() throws SQLException {
        List<String> ids = texts("SELECT id FROM work ORDER BY id");
        run("UPDATE work SET id = 'x' WHERE id = '" + ids.get(0) + "'");
        run("UPDATE work SET id = '" + ids.get(0) + "' WHERE id = '" + ids.get(1) + "'");
        run("UPDATE work SET id = '" + ids.get(1) + "' WHERE id = 'x'");

        assertThat(verified())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.RECORD_NOT_AS_WRITTEN, ProblemKind.RECORD_NOT_AS_WRITTEN);
    }

    /**
     * The check looks at every record and all history. It leaves out which logbook the file is (no record depends on
     * it; it names the folder of the backups), drafts (not yet part of the logbook), and the closed lists of words,
     * whose words are seen through the records that use them.
     */
    @Test
    void the_tables_the_check_leaves_out_are_few_and_hold_no_record() throws SQLException {
        Set<String> left =
                new TreeSet<>(texts("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'"));
        RecordTypes.all().forEach(type -> left.remove(type.name()));
        left.remove("amendment");
        Set<String> words = left.stream().filter(TamperingTest::isListOfWords).collect(Collectors.toSet());
        left.removeAll(words);

        assertThat(left).containsExactly("draft", "kept_piece", "logbook");
        assertThat(words).hasSize(58);
        run("UPDATE run_kind SET code = 'raced' WHERE code = (SELECT kind FROM run LIMIT 1)");
        assertThat(verified()).extracting(Problem::kind).contains(ProblemKind.LOGBOOK_DAMAGED);
    }

    @Test
    void what_is_found_is_said_in_whole_sentences() throws SQLException {
        run("UPDATE engine SET number = number || '0'");
        run("UPDATE amendment SET who = 'Somebody' WHERE number = 3");
        run("UPDATE run SET engine_id = 'nothing' WHERE rowid = 1");

        assertThat(Sentences.complete(verified()))
                .anyMatch(sentence -> sentence.matches("The engine '.*' is not as it was written: something changed it"
                        + " past the program. What was written is still in its history; until it stands again, lives,"
                        + " sums and dues that rest on it may be wrong. Open its history and restore what is right, or"
                        + " restore the newest good backup."))
                .contains("The history written on device-a is broken at its change 3. The entries can still be read,"
                        + " but not proven to be as they were written. Compare them with the newest good backup before"
                        + " you rely on a figure of theirs.");
    }

    private static boolean isListOfWords(String table) {
        return !List.of("draft", "kept_piece", "logbook").contains(table);
    }

    private static boolean breaksTheChain(Problem problem) {
        return problem.kind() == ProblemKind.CHAIN_BROKEN;
    }

    private List<Problem> verified() {
        return new Verification(folder.resolve("team.witness"), new Canonical()).of(database, facts);
    }

    private record Cell(String table, String column, String type, long row) {}

    /** One cell of every column, in a row of its own choice. */
    private List<Cell> cells(String table, Random random) throws SQLException {
        List<String> rows = texts("SELECT rowid FROM \"" + table + "\"");
        List<Cell> cells = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet columns =
                        statement.executeQuery("SELECT name, type FROM pragma_table_info('" + table + "')")) {
            while (columns.next()) {
                long row = Long.parseLong(rows.get(random.nextInt(rows.size())));
                cells.add(new Cell(table, columns.getString(1), columns.getString(2), row));
            }
        }
        return cells;
    }

    /**
     * Cells to be changed at once: no two in one table, so that each is found by itself, and of a few tables only, since
     * no more than so many faults are told.
     */
    private List<List<Cell>> tableByTable(Random random) throws SQLException {
        List<List<Cell>> groups = new ArrayList<>();
        List<RecordType<?>> types = RecordTypes.all();
        for (int from = 0; from < types.size(); from += TABLES_AT_ONCE) {
            List<List<Cell>> tables = new ArrayList<>();
            for (RecordType<?> type : types.subList(from, Math.min(from + TABLES_AT_ONCE, types.size()))) {
                tables.add(cells(type.name(), random));
            }
            int most = tables.stream().mapToInt(List::size).max().orElse(0);
            for (int column = 0; column < most; column++) {
                int at = column;
                groups.add(tables.stream()
                        .filter(table -> at < table.size())
                        .map(table -> table.get(at))
                        .toList());
            }
        }
        return groups;
    }

    private static boolean isNamed(Problem problem, String table) {
        return problem.kind() == ProblemKind.RECORD_NOT_AS_WRITTEN
                && problem.facts().get(0).equals(table);
    }

    /** @return whether it was changed, and not refused by a rule of the table each of several times */
    private boolean change(Cell cell, Random random) throws SQLException {
        Object before = read(cell);
        for (int i = 0; i < 20; i++) {
            Object after = cell.type().equals("INTEGER") ? number(before, random) : text(before, random);
            if (java.util.Objects.equals(before, after)) {
                continue;
            }
            try (PreparedStatement update = connection.prepareStatement(
                    "UPDATE \"" + cell.table() + "\" SET \"" + cell.column() + "\" = ? WHERE rowid = ?")) {
                Database.bind(update, 1, after);
                update.setLong(2, cell.row());
                assertThat(update.executeUpdate()).isEqualTo(1);
                return true;
            } catch (SQLException e) {
                LOG.debug("not null, or no two alike: another change is tried", e);
            }
        }
        return false;
    }

    private @Nullable Object read(Cell cell) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(
                        "SELECT \"" + cell.column() + "\" FROM \"" + cell.table() + "\" WHERE rowid = " + cell.row())) {
            String text = row.getString(1);
            return text == null || !cell.type().equals("INTEGER") ? text : Long.valueOf(row.getLong(1));
        }
    }

    private static @Nullable Object number(@Nullable Object before, Random random) {
        long from = before == null ? 0 : (Long) before;
        return switch (random.nextInt(6)) {
            case 0 -> from + 1;
            case 1 -> from - 1;
            case 2 -> from ^ (1L << random.nextInt(63));
            case 3 -> from + (1L << 32);
            case 4 -> before == null ? 0L : null;
            default -> -from;
        };
    }

    private static @Nullable Object text(@Nullable Object before, Random random) {
        if (before == null) {
            return random.nextBoolean() ? "" : "word";
        }
        String from = (String) before;
        int at = from.isEmpty() ? 0 : random.nextInt(from.length());
        return switch (random.nextInt(7)) {
            case 0 -> from.toUpperCase(Locale.ROOT);
            case 1 -> from + " ";
            case 2 -> from.substring(0, at);
            case 3 -> null;
            case 4 ->
                from.isEmpty() ? "x" : from.substring(0, at) + (char) (from.charAt(at) ^ 1) + from.substring(at + 1);
            case 5 -> " " + from;
            default -> from.substring(0, at) + "\u200b" + from.substring(at);
        };
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    private List<String> texts(String query) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }
}
