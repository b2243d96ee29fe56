package witnessmark.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.Pragma;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TempStore;
import org.sqlite.SQLiteConfig.TransactionMode;

/**
 * Opens SQLite files. None of these makes a file that is not there. What a hostile file could ask for is cut: no
 * extensions, no mapped memory, no trusted schema, short limits (sqlite.org/security.html, "Untrusted SQLite Database
 * Files").
 */
final class Connections {
    /** Milliseconds to wait for another program that is in the file just now. */
    private static final int BUSY_MILLIS = 3_000;

    /** Pages kept in memory, for imports and checks of large logbooks; taken as they are used. */
    private static final int CACHE_KIB = 32 * 1_024;

    private final Sql sql;

    Connections(Sql sql) {
        this.sql = sql;
    }

    /** To read and write. Each commit is on the disk when it returns: write-ahead log, synchronous FULL. */
    Database writer(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        return open(config, file, "?mode=rw");
    }

    /** To read what others may be writing. */
    Database reader(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setReadOnly(true);
        return open(config, file, "?mode=ro");
    }

    /** To read a file that nobody writes; no file is made beside it, so a read-only place will do. */
    Database frozen(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setReadOnly(true);
        return open(config, file, "?mode=ro&immutable=1");
    }

    /** For a migration or to mark a new file; references are not watched meanwhile. */
    static SQLiteConfig unguarded() {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(false);
        config.setBusyTimeout(BUSY_MILLIS);
        return config;
    }

    /** The address of a file, whatever characters are in its name. */
    static String address(Path file) {
        return "jdbc:sqlite:" + file.toUri().toASCIIString();
    }

    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.enableLoadExtension(false);
        config.setBusyTimeout(BUSY_MILLIS);
        config.setTransactionMode(TransactionMode.IMMEDIATE);
        config.setGetGeneratedKeys(false);
        config.setCacheSize(-CACHE_KIB);
        config.setTempStore(TempStore.MEMORY); // else the journal of each statement with triggers goes through a file
        config.setPragma(Pragma.MMAP_SIZE, "0");
        config.setPragma(Pragma.LIMIT_LENGTH, "67108864");
        config.setPragma(Pragma.LIMIT_SQL_LENGTH, "200000");
        config.setPragma(Pragma.LIMIT_COLUMN, "200");
        config.setPragma(Pragma.LIMIT_EXPR_DEPTH, "50");
        config.setPragma(Pragma.LIMIT_TRIGGER_DEPTH, "10");
        config.setPragma(Pragma.LIMIT_ATTACHED, "1");
        return config;
    }

    private Database open(SQLiteConfig config, Path file, String mode) throws SQLException {
        Connection connection = config.createConnection(address(file) + mode);
        Database database = new Database(connection, sql);
        try {
            database.set("file/trusted_schema");
            database.set("file/cell_size_check");
            if (!isNewEnough(database.text("file/sqlite_version"))) {
                throw new SQLException("this SQLite is older than 3.51.3 and may damage a log that two programs use");
            }
            return database;
        } catch (SQLException e) {
            try {
                database.close();
            } catch (SQLException closing) {
                e.addSuppressed(closing);
            }
            throw e;
        }
    }

    /** SQLite before 3.51.3 may damage a write-ahead log in rare cases (sqlite.org/wal.html, "The WAL-Reset Bug"). */
    static boolean isNewEnough(String version) {
        String[] parts = version.split("\\.");
        int number = 0;
        for (int i = 0; i < 3; i++) {
            number = number * 1_000 + (i < parts.length ? Integer.parseInt(parts[i]) : 0);
        }
        return number >= 3_051_003;
    }
}
