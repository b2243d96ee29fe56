package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows read from pages are those that SQLite reads, whatever lies in them; of a torn file none is made up or hangs. */
class LeafPagesTest {
    private static final long SEED = 20_261_130L;
    private static final int ROWS = 1_500;

    /** Around what stays on a page and what runs over (sqlite.org/fileformat2.html, 1.6). */
    private static final int[] LENGTHS = {0, 1, 57, 58, 488, 489, 4_040, 4_050, 4_060, 4_061, 4_062, 4_581, 4_582, 9_000
    };

    @TempDir
    private Path folder;

    private final Random random = new Random(SEED);

    @Test
    void every_row_is_what_sqlite_reads() throws Exception {
        Path file = made();
        List<String> read = new ArrayList<>();
        try (LeafPages pages = new LeafPages(file)) {
            pages.each((page, values) -> read.add(shown(values)));
            assertThat(pages.children()).isNotEmpty();
        }
        assertThat(read).as("seed %d", SEED).containsExactlyInAnyOrderElementsOf(asSqliteReads(file));
    }

    @Test
    void of_a_torn_file_no_more_than_rows_come() throws Exception {
        Path file = made();
        byte[] whole = Files.readAllBytes(file);
        for (int i = 0; i < 40; i++) {
            Path torn = Files.write(folder.resolve("torn-" + i), whole);
            try (RandomAccessFile open = new RandomAccessFile(torn.toFile(), "rw")) {
                for (int k = 0; k < 400; k++) {
                    open.seek(random.nextInt(whole.length));
                    open.write(random.nextInt());
                }
                open.setLength(whole.length - random.nextInt(9_000));
            }
            int[] rows = {0};
            try (LeafPages pages = new LeafPages(torn)) {
                pages.children();
                pages.each((page, values) -> rows[0]++);
            }
            assertThat(rows[0]).as("seed %d, file %d", SEED, i).isPositive();
        }
    }

    private Path made() throws SQLException {
        Path file = folder.resolve("rows");
        try (Connection connection = DriverManager.getConnection(Connections.address(file));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("CREATE TABLE t (a INTEGER, b TEXT, c BLOB, d INTEGER)");
            connection.setAutoCommit(false);
            try (PreparedStatement insert = connection.prepareStatement("INSERT INTO t VALUES (?, ?, ?, ?)")) {
                for (int i = 0; i < ROWS; i++) {
                    insert.setObject(1, number());
                    insert.setString(2, random.nextInt(5) == 0 ? null : "é".repeat(length() / 2));
                    byte[] bytes = new byte[length()];
                    random.nextBytes(bytes);
                    insert.setBytes(3, bytes);
                    insert.setObject(4, number());
                    insert.executeUpdate();
                }
            }
            statement.executeUpdate("ALTER TABLE t ADD COLUMN e TEXT"); // the rows there stay as long as they were
            connection.commit();
        }
        return file;
    }

    private int length() {
        return LENGTHS[random.nextInt(LENGTHS.length)];
    }

    private @Nullable Long number() {
        return random.nextInt(6) == 0 ? null : (Long) (random.nextLong() >> random.nextInt(64));
    }

    private static List<String> asSqliteReads(Path file) throws SQLException {
        List<String> rows = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection(Connections.address(file));
                Statement statement = connection.createStatement();
                ResultSet all = statement.executeQuery("SELECT a, b, c, d FROM t")) {
            while (all.next()) {
                Number first = (Number) all.getObject(1);
                Number last = (Number) all.getObject(4);
                rows.add(shown(Arrays.asList(
                        first == null ? null : (Long) first.longValue(),
                        all.getString(2),
                        all.getBytes(3),
                        last == null ? null : (Long) last.longValue())));
            }
        }
        return rows;
    }

    private static String shown(List<@Nullable Object> values) {
        return Arrays.deepToString(values.toArray());
    }
}
