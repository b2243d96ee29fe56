package witnessmark.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The schema a logbook file has to have. A file says its version in {@code user_version}; for each version the text of
 * the schema is known by its SHA-256, so that tables or triggers changed by another hand are seen before anything is
 * read. A new file runs the steps itself; Flyway, which takes its time to start, is asked only when a file is older.
 */
final class LogbookSchema {
    /** The application id of a logbook, "WITM" in ASCII, at byte 68 of the file (sqlite.org/fileformat2.html, 1.3). */
    static final int APPLICATION_ID = 0x5749544D;

    private final Sql sql;
    private final Canonical canonical;
    private final SchemaSteps steps;

    LogbookSchema(Sql sql, Canonical canonical, SchemaSteps steps) {
        this.sql = sql;
        this.canonical = canonical;
        this.steps = steps;
    }

    /** The newest version known. */
    int version() {
        return steps.version();
    }

    /** Whether the schema in a file is, to the letter, that of the version. */
    boolean isThatOf(int version, Database database) throws SQLException {
        return Optional.of(digest(database))
                .equals(Optional.ofNullable(steps.digests().get(version)));
    }

    /** SHA-256 of the schema's text. */
    String digest(Database database) throws SQLException {
        StringBuilder text = new StringBuilder();
        database.each(
                "file/schema",
                row -> text.append(row.getString(1))
                        .append('\n')
                        .append(row.getString(2))
                        .append('\n')
                        .append(row.getString(3).replace("\r\n", "\n"))
                        .append('\n'));
        return canonical.hash(text.toString());
    }

    /** Makes every table in an empty file and marks it as a logbook, in one transaction for the tables. */
    void create(Path file) throws SQLException {
        try (Connection connection = Connections.unguarded().createConnection(Connections.address(file));
                Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            for (int step = 1; step <= steps.version(); step++) {
                statement.executeUpdate(steps.text(step));
            }
            connection.commit();
        }
        mark(file);
    }

    /** The tables of the newest form in an empty file, without the guards: for what is only gathered there. */
    Database tablesAlone(Path file) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (Database whole = new Database(Connections.unguarded().createConnection("jdbc:sqlite::memory:"), sql)) {
            for (int step = 1; step <= steps.version(); step++) {
                whole.execute(steps.text(step));
            }
            whole.each("file/schema", row -> {
                if (row.getString(1).equals("table") && !row.getString(2).startsWith("sqlite_")) {
                    tables.add(row.getString(3));
                }
            });
        }
        Database alone = open(Connections.unguarded(), file);
        for (String table : tables) {
            alone.execute(table);
        }
        return alone;
    }

    /**
     * Brings a file to the newest version, all steps and the version in one transaction: cut short, the file is as it
     * was.
     *
     * @param from the version it has
     * @throws SQLException if a step fails or leaves a reference to nothing; the file is as it was then
     */
    void migrate(Path file, int from) throws SQLException {
        SQLiteDataSource source = new SQLiteDataSource(Connections.unguarded());
        source.setUrl(Connections.address(file));
        try {
            Flyway.configure(LogbookSchema.class.getClassLoader())
                    .dataSource(source)
                    .locations("classpath:" + steps.folder())
                    .baselineOnMigrate(true) // where Flyway has not been before, it takes the file as it says it is
                    .baselineVersion(Integer.toString(from))
                    .placeholderReplacement(false)
                    .ignoreMigrationPatterns(new String[0])
                    .callbacks(new StepMarks(sql))
                    .group(true)
                    .loggers("slf4j")
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new SQLException("the logbook could not be brought to the newest form: " + e.getMessage(), e);
        }
        mark(file);
    }

    private void mark(Path file) throws SQLException {
        try (Database database = open(Connections.unguarded(), file)) {
            long broken = database.number("file/foreign_key_count");
            if (broken > 0) {
                throw new SQLException("after the change of form " + broken + " references lead nowhere");
            }
        }
        SQLiteConfig marking = Connections.unguarded();
        marking.setApplicationId(APPLICATION_ID);
        marking.setUserVersion(version());
        try (Database database = open(marking, file)) {
            if (database.number("file/user_version") != version()) {
                throw new SQLException("the version could not be written");
            }
        }
    }

    private Database open(SQLiteConfig config, Path file) throws SQLException {
        return new Database(config.createConnection(Connections.address(file)), sql);
    }
}
