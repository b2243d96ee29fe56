package witnessmark.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.callback.Callback;
import org.flywaydb.core.api.callback.Context;
import org.flywaydb.core.api.callback.Event;

/**
 * Writes after each step, within the transaction of all of them, which form the file has now, once no reference leads
 * nowhere. So a file whose change of form is cut short never says that it has a form that it has not.
 */
final class StepMarks implements Callback {
    private final Sql sql;

    StepMarks(Sql sql) {
        this.sql = sql;
    }

    @Override
    public boolean supports(Event event, Context context) {
        return event == Event.AFTER_EACH_MIGRATE;
    }

    @Override
    public boolean canHandleInTransaction(Event event, Context context) {
        return true;
    }

    @Override
    public void handle(Event event, Context context) {
        String version = context.getMigrationInfo().getVersion().getMajorAsString();
        Connection connection = context.getConnection(); // Flyway's own, which closes it
        try (Statement statement = connection.createStatement()) {
            try (ResultSet broken = statement.executeQuery(sql.text("file/foreign_key_count"))) {
                if (broken.next() && broken.getLong(1) > 0) {
                    throw new FlywayException(broken.getLong(1) + " references lead nowhere");
                }
            }
            statement.executeUpdate(sql.text("file/mark_version").replace("= 0", "= " + version));
        } catch (SQLException e) {
            throw new FlywayException("the form could not be written down: " + e.getMessage(), e);
        }
    }

    @Override
    public String getCallbackName() {
        return StepMarks.class.getSimpleName();
    }
}
