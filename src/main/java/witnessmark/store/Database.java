package witnessmark.store;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Savepoint;
import java.sql.Statement;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.sqlite.ProgressHandler;

/** One connection to a logbook file with its statements, each prepared once. Used by one thread at a time. */
final class Database implements AutoCloseable {
    /** Work that may fail as SQLite does. */
    interface Work<T> {
        T run() throws SQLException;
    }

    /** What to do with each row. */
    interface EachRow {
        void take(ResultSet row) throws SQLException;
    }

    /** Steps of SQLite's machine between two looks at the clock: well under a millisecond. */
    private static final int STEPS = 10_000;

    private final Connection connection;
    private final Sql sql;
    private final Map<String, PreparedStatement> statements = new HashMap<>();

    Database(Connection connection, Sql sql) {
        this.connection = connection;
        this.sql = sql;
    }

    /** The statement of that name, without the parameters of its last use. */
    PreparedStatement statement(String name) throws SQLException {
        PreparedStatement statement = statements.get(name);
        if (statement == null) {
            statement = connection.prepareStatement(sql.text(name));
            statements.put(name, statement);
        }
        statement.clearParameters();
        return statement;
    }

    /**
     * Runs a statement that gives no rows.
     *
     * @return how many rows it wrote
     */
    int run(String name, @Nullable Object... parameters) throws SQLException {
        return bound(name, parameters).executeUpdate();
    }

    /** Runs steps of a schema. */
    void execute(String steps) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(steps);
        }
    }

    /** Runs a statement whose rows, if it gives any, are of no interest. */
    void set(String name) throws SQLException {
        PreparedStatement statement = statement(name);
        if (statement.execute()) {
            statement.getResultSet().close();
        }
    }

    /** Hands every row of a query on; the rows are closed even when one is refused. */
    void each(String name, EachRow each, @Nullable Object... parameters) throws SQLException {
        try (ResultSet rows = bound(name, parameters).executeQuery()) {
            while (rows.next()) {
                each.take(rows);
            }
        }
    }

    /**
     * The rows of a query put otherwise than it is written, to be read beside others; for once, and not kept.
     *
     * @param put makes the text that is run of the one of that name
     */
    ResultSet rows(String name, UnaryOperator<String> put) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(put.apply(sql.text(name)));
        statement.closeOnCompletion();
        return statement.executeQuery();
    }

    /** The first column of the first row. */
    long number(String name, @Nullable Object... parameters) throws SQLException {
        try (ResultSet rows = bound(name, parameters).executeQuery()) {
            return rows.next() ? rows.getLong(1) : 0;
        }
    }

    /** The first column of the first row; empty when there is none. */
    String text(String name) throws SQLException {
        try (ResultSet rows = statement(name).executeQuery()) {
            String text = rows.next() ? rows.getString(1) : null;
            return text == null ? "" : text;
        }
    }

    /**
     * What stands in a place that is never empty in a whole file.
     *
     * @throws IllegalArgumentException if it is empty, as in a damaged one
     */
    static String text(ResultSet row, int at) throws SQLException {
        String text = textOrNull(row, at);
        if (text == null) {
            throw new IllegalArgumentException("nothing stands where something must");
        }
        return text;
    }

    /** A text as its bytes, which the driver hands over in a third of the time of a string. */
    static @Nullable String textOrNull(ResultSet row, int at) throws SQLException {
        byte @Nullable [] utf8 = row.getBytes(at);
        return utf8 == null ? null : new String(utf8, StandardCharsets.UTF_8);
    }

    /**
     * All that the work writes, or, when it throws, nothing of it; that it ran out of memory is no reason to keep a half.
     * The write lock is taken at the start.
     */
    <T> T transaction(Work<T> work) throws SQLException {
        connection.setAutoCommit(false);
        try {
            T result = work.run();
            connection.commit();
            connection.setAutoCommit(true);
            return result;
        } catch (SQLException | RuntimeException | Error e) {
            rollBack(e);
            throw e;
        }
    }

    /**
     * Brings all that lies in the log into the file. Closing does that too, but says nothing when it cannot, and then the
     * file alone is not the logbook.
     *
     * @throws SQLException if something stays in the log
     */
    void settle() throws SQLException {
        each("file/checkpoint", row -> {
            if (row.getInt(1) != 0 || row.getInt(2) != row.getInt(3)) {
                throw new SQLException("writes stay in the log");
            }
        });
    }

    /** Reads the logbook as it stands at one moment, whatever is written meanwhile. Not within a transaction. */
    <T> T still(Work<T> reading) throws SQLException {
        set("file/stand_still");
        try {
            return reading.run();
        } finally {
            set("file/go_on");
        }
    }

    /** From now on nothing may take longer than this, counted from now: a file may be made to keep a program busy. */
    void within(Duration longest) throws SQLException {
        long end = System.nanoTime() + longest.toNanos();
        ProgressHandler.setHandler(connection, STEPS, new ProgressHandler() {
            @Override
            protected int progress() {
                return System.nanoTime() - end > 0 ? 1 : 0;
            }
        });
    }

    /** Everything may take its time again. */
    void anyTime() throws SQLException {
        ProgressHandler.clearHandler(connection);
    }

    /** A point within a transaction to come back to. */
    Savepoint savepoint() throws SQLException {
        return connection.setSavepoint();
    }

    void rollBackTo(Savepoint before) throws SQLException {
        connection.rollback(before);
    }

    @Override
    public void close() throws SQLException {
        for (PreparedStatement statement : statements.values()) {
            statement.close();
        }
        statements.clear();
        connection.close();
    }

    private void rollBack(Throwable cause) {
        try {
            connection.rollback();
            connection.setAutoCommit(true);
        } catch (SQLException e) {
            cause.addSuppressed(e);
        }
    }

    private PreparedStatement bound(String name, @Nullable Object... parameters) throws SQLException {
        PreparedStatement statement = statement(name);
        for (int i = 0; i < parameters.length; i++) {
            bind(statement, i + 1, parameters[i]);
        }
        return statement;
    }

    /** Values are whole numbers, text, null, or the bytes of a kept piece: nothing else is ever stored. */
    static void bind(PreparedStatement statement, int at, @Nullable Object value) throws SQLException {
        if (value instanceof Long number) {
            statement.setLong(at, number);
        } else if (value instanceof Integer number) {
            statement.setInt(at, number);
        } else if (value instanceof byte[] bytes) {
            statement.setBytes(at, bytes);
        } else {
            statement.setString(at, (String) value);
        }
    }
}
