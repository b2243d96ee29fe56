package witnessmark.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Set;

/** Which form a logbook file has. */
public final class LogbookForm {
    private LogbookForm() {}

    /** Of a file that nobody has open. */
    public static int of(Path file) throws SQLException {
        try (Database database = new Connections(new Sql()).frozen(file)) {
            return (int) database.number("file/user_version");
        }
    }

    public static int newest() {
        return SchemaSteps.ours().version();
    }

    /** Every form whose files are opened. */
    public static Set<Integer> known() {
        return SchemaSteps.ours().digests().keySet();
    }
}
