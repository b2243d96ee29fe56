package witnessmark.store;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Locale;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What a failure of SQLite means for the people whose file it is. */
final class Faults {
    private Faults() {}

    /** A failure while opening or reading. */
    static Problem reading(Path path, SQLException e) {
        return switch (base(e)) {
            case SQLITE_NOTADB -> Problem.of(ProblemKind.NOT_A_LOGBOOK, path, "a file of another kind");
            case SQLITE_CORRUPT, SQLITE_FORMAT -> Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, words(e));
            default -> Problem.of(ProblemKind.CANNOT_READ_FILE, path, words(e));
        };
    }

    /** A failure while writing. */
    static Problem writing(Path path, SQLException e) {
        return switch (base(e)) {
            case SQLITE_FULL -> Problem.of(ProblemKind.DISK_FULL, path);
            case SQLITE_CORRUPT, SQLITE_NOTADB -> Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, words(e));
            default ->
                noSpace(e)
                        ? Problem.of(ProblemKind.DISK_FULL, path)
                        : Problem.of(ProblemKind.CANNOT_WRITE, path, words(e));
        };
    }

    /** A failure while writing another file than SQLite's. */
    static Problem writing(Path path, IOException e) {
        String said = e instanceof FileSystemException system && system.getReason() != null
                ? system.getReason()
                : e.getClass().getSimpleName().replace("Exception", "") + ": " + e.getMessage();
        return noSpace(e) ? Problem.of(ProblemKind.DISK_FULL, path) : Problem.of(ProblemKind.CANNOT_WRITE, path, said);
    }

    /** Whether the file read is at fault. */
    static boolean isDamage(SQLException e) {
        return switch (base(e)) {
            case SQLITE_CORRUPT, SQLITE_NOTADB, SQLITE_FORMAT -> true;
            default -> false;
        };
    }

    /** Whether one statement was refused by a rule of the schema, and the transaction goes on. */
    static boolean isRefusal(SQLException e) {
        return base(e) == SQLiteErrorCode.SQLITE_CONSTRAINT;
    }

    /** SQLite's message without the code in front of it. */
    static String words(SQLException e) {
        String message = String.valueOf(e.getMessage());
        int from = message.startsWith("[") ? message.indexOf(']') + 1 : 0;
        return message.substring(from).strip();
    }

    /** The primary result code; extended codes hold it in their low byte (sqlite.org/rescode.html). */
    private static SQLiteErrorCode base(SQLException e) {
        int code = e instanceof SQLiteException sqlite ? sqlite.getResultCode().code : e.getErrorCode();
        return SQLiteErrorCode.getErrorCode(code & 0xff);
    }

    private static boolean noSpace(Throwable e) {
        return String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("no space left");
    }
}
