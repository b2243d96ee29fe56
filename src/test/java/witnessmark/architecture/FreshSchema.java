package witnessmark.architecture;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** An empty logbook in memory, made by the schema files in order. */
final class FreshSchema implements AutoCloseable {
    private final Connection connection;

    private FreshSchema(Connection connection) {
        this.connection = connection;
    }

    static List<Path> scripts() {
        return SourceTree.files("sql/schema", ".sql").stream()
                .sorted(Comparator.comparing(path -> path.getFileName().toString()))
                .toList();
    }

    static FreshSchema open() throws SQLException {
        FreshSchema schema = new FreshSchema(DriverManager.getConnection("jdbc:sqlite::memory:"));
        for (Path script : scripts()) {
            schema.run(SourceTree.text(script));
        }
        return schema;
    }

    /** Runs a whole script; SQLite itself finds where each statement ends, also within triggers. */
    void run(String script) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(script);
        }
    }

    /** Lets SQLite check the statement against the tables without running it. */
    void prepare(String sql) throws SQLException {
        connection.prepareStatement(sql).close();
    }

    Set<String> tables() throws SQLException {
        Set<String> names = new TreeSet<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows =
                        statement.executeQuery("SELECT name FROM sqlite_schema WHERE type IN ('table', 'view')")) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return names;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
