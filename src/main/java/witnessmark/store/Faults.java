package witnessmark.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Locale;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What a failure of SQLite means for the people whose file it is. */
final class Faults {
    /** What is damaged, in the words of whoever opens the file. */
    static final String TORN = "parts of it can no longer be read";

    private static final String NO_ANSWER = "the disk did not do what was asked of it";
    private static final Logger LOG = LoggerFactory.getLogger(Faults.class);

    private Faults() {}

    /** A failure while opening or reading. */
    static Problem reading(Path path, SQLException e) {
        return switch (base(e)) {
            case SQLITE_NOTADB -> Problem.of(ProblemKind.NOT_A_LOGBOOK, path, "a file of another kind");
            case SQLITE_CORRUPT, SQLITE_FORMAT -> Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, words(e));
            case SQLITE_INTERRUPT ->
                Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, "it takes longer to read than any logbook would");
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
        return noSpace(e)
                ? Problem.of(ProblemKind.DISK_FULL, path)
                : Problem.of(ProblemKind.CANNOT_WRITE, path, words(e));
    }

    /**
     * A failure in a second place.
     *
     * @param folder of the copies there; without it the place is gone
     */
    static Problem place(Path place, Path folder, IOException e) {
        if (noSpace(e)) {
            return Problem.of(ProblemKind.PLACE_FULL, place);
        }
        if (readOnly(e)) {
            return Problem.of(ProblemKind.PLACE_NOT_WRITABLE, place);
        }
        return Files.isDirectory(folder) || Files.isDirectory(place)
                ? Problem.of(ProblemKind.PLACE_FAILED, place, words(e))
                : Problem.of(ProblemKind.PLACE_GONE, place);
    }

    /** Why a file could not be read or written, as people say it. */
    static String words(IOException e) {
        LOG.info("a file could not be read or written", e);
        if (e instanceof AccessDeniedException) {
            return "whoever is logged in on this computer is not allowed to";
        }
        if (e instanceof NoSuchFileException) {
            return "there is nothing at that place";
        }
        return e instanceof FileSystemException system && system.getReason() != null ? system.getReason() : NO_ANSWER;
    }

    /** Whether the file read is at fault. */
    static boolean isDamage(SQLException e) {
        return switch (base(e)) {
            case SQLITE_CORRUPT, SQLITE_NOTADB, SQLITE_FORMAT -> true;
            default -> false;
        };
    }

    /** Whether the disk failed to read, write or sync, so that nothing is known of the connection; not that it is full. */
    static boolean isDiskFailure(SQLException e) {
        return base(e) == SQLiteErrorCode.SQLITE_IOERR && !noSpace(e);
    }

    /** Whether one statement was refused by a rule of the schema, and the transaction goes on. */
    static boolean isRefusal(SQLException e) {
        return base(e) == SQLiteErrorCode.SQLITE_CONSTRAINT;
    }

    /** Why SQLite could not read or write, as people say it; its own words go to the log. */
    private static String words(SQLException e) {
        LOG.warn("SQLite could not read or write", e);
        return switch (base(e)) {
            case SQLITE_CORRUPT, SQLITE_FORMAT, SQLITE_NOTADB -> TORN;
            case SQLITE_BUSY, SQLITE_LOCKED -> "another program holds it";
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH -> "nothing can be written there";
            case SQLITE_CANTOPEN -> "it cannot be opened at that place";
            case SQLITE_IOERR -> NO_ANSWER;
            default -> "the log of this program says more";
        };
    }

    /** What a rule of the schema says, without the code in front of it. */
    static String rule(SQLException e) {
        String message = String.valueOf(e.getMessage());
        int from = message.startsWith("[") ? message.indexOf(']') + 1 : 0;
        return message.substring(from).strip();
    }

    /** The primary result code; extended codes hold it in their low byte (sqlite.org/rescode.html). */
    private static SQLiteErrorCode base(SQLException e) {
        int code = e instanceof SQLiteException sqlite ? sqlite.getResultCode().code : e.getErrorCode();
        return SQLiteErrorCode.getErrorCode(code & 0xff);
    }

    private static boolean readOnly(IOException e) {
        return e instanceof AccessDeniedException
                || String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("read-only");
    }

    private static boolean noSpace(Throwable e) {
        String message = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
        return message.contains("no space left") || message.contains("quota exceeded");
    }
}
