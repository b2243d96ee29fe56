package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteConfig;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;
import witnessmark.store.Sentences;

/**
 * Logbook files made by somebody who means harm: guards taken out or put in, views where tables should be, functions in
 * the schema, a schema that lies about itself, values far too large, pages that lead nowhere or in a ring. None of it is
 * run, none of it is read as a whole logbook that says otherwise, and the program goes on.
 */
class HostileFileTest {
    private static final int MUTANTS = Numbers.of("hostile", 200, 10_000);
    private static final int PAGE = 4_096;
    private static final int HEAD = 100;

    @TempDir(factory = InMemory.class)
    static Path folder;

    private static WholeLogbook whole;

    @BeforeAll
    static void make() throws IOException {
        whole = WholeLogbook.in(folder, Numbers.seed());
    }

    /** Each leaves a trace of its own if anything of it is ever run. */
    private static final List<String> SCHEMAS = List.of(
            "CREATE TRIGGER more AFTER INSERT ON run BEGIN UPDATE run SET running_ms = 1; END",
            "DROP TRIGGER amendment_no_delete",
            "DROP TRIGGER run_amended",
            "CREATE VIEW lives AS SELECT * FROM run",
            "ALTER TABLE car RENAME TO car_0; CREATE VIEW car AS SELECT * FROM car_0",
            "ALTER TABLE run RENAME TO run_0; CREATE VIEW run AS SELECT * FROM run_0",
            "ALTER TABLE car ADD COLUMN twice TEXT GENERATED ALWAYS AS (name || name) VIRTUAL",
            "ALTER TABLE run ADD COLUMN mine INTEGER",
            "CREATE INDEX slow ON car (hex(zeroblob(100000)))",
            "CREATE TABLE more (id TEXT CHECK (length(id) < 9))",
            "CREATE VIRTUAL TABLE found USING fts5(name)",
            "CREATE VIRTUAL TABLE boxes USING rtree(id, low, high)",
            "PRAGMA writable_schema = 1; UPDATE sqlite_schema SET sql = replace(sql, 'STRICT', '') WHERE name = 'run'",
            "PRAGMA writable_schema = 1; UPDATE sqlite_schema SET rootpage ="
                    + " (SELECT rootpage FROM sqlite_schema WHERE name = 'event') WHERE name = 'run'",
            "PRAGMA writable_schema = 1; UPDATE sqlite_schema SET rootpage = 999999 WHERE name = 'run'",
            "PRAGMA writable_schema = 1; UPDATE sqlite_schema SET sql = 'CREATE TABLE run(' WHERE name = 'run'",
            "PRAGMA writable_schema = 1; DELETE FROM sqlite_schema WHERE type = 'trigger'",
            "PRAGMA writable_schema = 1; DELETE FROM sqlite_schema WHERE name = 'part'",
            "PRAGMA writable_schema = 1; UPDATE sqlite_schema SET name = 'car', tbl_name = 'car' WHERE name = 'event'",
            "PRAGMA writable_schema = 1; INSERT INTO sqlite_schema VALUES ('trigger', 'x', 'run', 0,"
                    + " 'CREATE TRIGGER x AFTER INSERT ON run BEGIN SELECT load_extension(''x''); END')",
            "PRAGMA user_version = 11",
            "PRAGMA user_version = 1",
            "PRAGMA user_version = -1",
            "PRAGMA user_version = 2147483647",
            "PRAGMA application_id = 7",
            "PRAGMA encoding = 'UTF-16'; PRAGMA user_version = 99; DROP TABLE car",
            "DELETE FROM logbook",
            "UPDATE logbook SET id = '../../../../tmp/away'",
            "UPDATE logbook SET id = 'x'",
            "INSERT INTO draft VALUES ('run', '', 'no JSON at all', 9223372036854775807)",
            "UPDATE run SET name = hex(zeroblob(40000000)) WHERE rowid = 1",
            "UPDATE run SET running_ms = 9223372036854775807",
            "UPDATE run SET running_ms = -1",
            "UPDATE amendment SET after = '[' || after || ']'",
            "UPDATE amendment SET after = replace(hex(zeroblob(100000)), '0', '[') WHERE number = 2",
            "UPDATE amendment SET clock_ms = 9223372036854775807 WHERE number = 3",
            "UPDATE engine SET design_id = id",
            "DELETE FROM amendment",
            "DELETE FROM amendment WHERE number % 2 = 0");

    @Test
    void a_file_made_to_do_harm_does_none() throws IOException, SQLException {
        Random random = Numbers.random("hostile");
        Map<Judgement, Integer> counts = new EnumMap<>(Judgement.class);
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < MUTANTS; i++) {
            Path file = whole.placeIn(folder, "hostile-" + i);
            String what;
            if (i < SCHEMAS.size()) {
                what = SCHEMAS.get(i);
                WholeLogbook.put(file, whole.bytes);
                run(file, what);
            } else {
                byte[] bytes = whole.bytes.clone();
                what = mutate(bytes, random);
                WholeLogbook.put(file, bytes);
            }
            try {
                Judgement judgement = Judgement.of(whole.open(file), whole.truth);
                counts.merge(judgement, 1, Integer::sum);
                if (judgement == Judgement.SILENTLY_WRONG) {
                    wrong.add(what);
                }
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                wrong.add(what + ": " + e);
            }
            WholeLogbook.remove(file);
        }
        Numbers.tell("R18 hostile files", counts);
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
        assertThat(folder.resolveSibling("away")).doesNotExist();
        assertThat(counts.get(Judgement.REFUSED)).isGreaterThan(SCHEMAS.size() / 2);
    }

    @Test
    void whatever_changes_its_tables_or_guards_is_called_altered() throws IOException, SQLException {
        for (String change : SCHEMAS.subList(0, 4)) {
            Path file = folder.resolve("altered.witness");
            WholeLogbook.put(file, whole.bytes);
            run(file, change);
            Outcome<Logbook> opened = whole.open(file);
            Sentences.only(opened, ProblemKind.LOGBOOK_ALTERED);
        }
    }

    private static void run(Path file, String statements) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(false);
        try (Connection connection = config.createConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA ignore_check_constraints = ON");
            boolean ofValues = statements.matches("(?s)(UPDATE|DELETE|INSERT) .*");
            Map<String, String> guards = ofValues ? guards(statement) : Map.of();
            for (String guard : guards.keySet()) {
                statement.execute("DROP TRIGGER " + guard);
            }
            for (String each : statements.contains("BEGIN") ? List.of(statements) : List.of(statements.split("; "))) {
                try {
                    statement.execute(each);
                } catch (SQLException refused) {
                    System.out.println("SQLite itself refuses: " + each);
                }
            }
            for (String guard : guards.values()) {
                statement.execute(guard); // so that they stand to the letter as before
            }
        }
    }

    private static Map<String, String> guards(Statement statement) throws SQLException {
        Map<String, String> guards = new TreeMap<>();
        try (ResultSet found = statement.executeQuery("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")) {
            while (found.next()) {
                guards.put(found.getString(1), found.getString(2));
            }
        }
        return guards;
    }

    /** Fields of the head and of pages set to what does most harm. */
    private static String mutate(byte[] bytes, Random random) {
        ByteBuffer file = ByteBuffer.wrap(bytes);
        int[] extremes = {0, 1, -1, 2, bytes.length / PAGE, bytes.length / PAGE + 1, Integer.MAX_VALUE, 0x80000000};
        int extreme = extremes[random.nextInt(extremes.length)];
        if (random.nextInt(4) == 0) {
            int at = 16 + 4 * random.nextInt(20);
            file.putInt(at, extreme);
            return "head, byte " + at + " is " + extreme;
        }
        int page = random.nextInt(bytes.length / PAGE);
        int start = page * PAGE + (page == 0 ? HEAD : 0);
        StringBuilder what = new StringBuilder("page " + (page + 1));
        for (int i = 0; i <= random.nextInt(3); i++) {
            int at = start
                    + switch (random.nextInt(3)) {
                        case 0 -> random.nextInt(12); // the page's own head
                        case 1 -> 8 + 2 * random.nextInt(20); // where its cells lie
                        default -> 8 + random.nextInt(PAGE - HEAD - 16); // lengths, pointers, values
                    };
            if (random.nextBoolean()) {
                file.putInt(at, extreme);
            } else {
                file.putShort(at, (short) random.nextInt(1 << 16));
            }
            what.append(", byte ").append(at);
        }
        return what.toString();
    }
}
