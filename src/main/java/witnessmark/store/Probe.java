package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Finds out what a file is before anything is written beside or into it. */
final class Probe {
    private static final Logger LOG = LoggerFactory.getLogger(Probe.class);

    /** The file itself, and what SQLite would take for the last writes to it. */
    private static final List<String> IN_THE_WAY = List.of("", "-wal", "-journal");

    private final Home home;

    Probe(Home home) {
        this.home = home;
    }

    /** What can be seen without reading the file, or null when it may be a logbook. */
    @Nullable
    Problem outside(Path path) {
        if (!Files.exists(path)) {
            return Problem.of(ProblemKind.LOGBOOK_GONE, path, home.backups());
        }
        if (Files.isDirectory(path)) {
            return Problem.of(ProblemKind.NOT_A_LOGBOOK, path, "a folder");
        }
        if (!Files.isRegularFile(path)) {
            return Problem.of(ProblemKind.NOT_A_LOGBOOK, path, "no ordinary file");
        }
        try {
            return Files.size(path) == 0 ? Problem.of(ProblemKind.NOT_A_LOGBOOK, path, "an empty file") : null;
        } catch (IOException e) {
            return Problem.of(ProblemKind.CANNOT_READ_FILE, path, Faults.words(e));
        }
    }

    /** Why no new logbook can be made at a path, or null: it is there, what another left is, or there is no folder. */
    static @Nullable Problem inTheWay(Path file) {
        for (String ending : IN_THE_WAY) {
            Path there = file.resolveSibling(file.getFileName() + ending);
            if (Files.exists(there)) {
                return Problem.of(ProblemKind.FILE_EXISTS, there);
            }
        }
        Path folder = SafeFiles.folderOf(file);
        return Files.isDirectory(folder) ? null : Problem.of(ProblemKind.NO_SUCH_FILE, folder);
    }

    /** What the first bytes tell, or null when they are a logbook's. Only while nobody in this process has it open. */
    static @Nullable Problem header(Path path) {
        try {
            boolean log = hasLog(path); // asked first: when it is gone, all it held is in the file
            Header header = Header.of(path);
            long size = Files.size(path);
            String instead = header.notALogbook(size);
            if (instead != null) {
                return Problem.of(ProblemKind.NOT_A_LOGBOOK, path, instead);
            }
            return header.cutShort(size) && !log
                    ? Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, "the end of the file is missing")
                    : null;
        } catch (IOException e) {
            return Problem.of(ProblemKind.CANNOT_READ_FILE, path, Faults.words(e));
        }
    }

    /** Whether writes lie beside the file that are not in it yet. */
    static boolean hasLog(Path path) {
        try {
            return Files.size(log(path)) > 0;
        } catch (IOException e) {
            return false; // there is none
        }
    }

    /** The file beside a logbook that holds writes not in it yet. */
    static Path log(Path path) {
        return path.resolveSibling(path.getFileName() + "-wal");
    }

    /**
     * Whether the writes left beside a file are another's: somebody put a backup or another logbook in its place.
     * SQLite would take them for the file's own. They are its own when they go on from its history and leave it whole. A
     * file that is not whole without them was left in the midst of taking them in.
     */
    boolean hasLogOfAnother(Path path) {
        if (!hasLog(path)) {
            return false;
        }
        try (Database without = home.connections.frozen(path)) {
            return !isWholeAndGoesOnFrom(without, path) && isWhole(path, without);
        } catch (SQLException e) {
            LOG.info("not whole without the writes beside it: {}", path, e);
            return false;
        }
    }

    private boolean isWholeAndGoesOnFrom(Database before, Path path) {
        try (Database with = home.connections.reader(path)) {
            return goesOnFrom(before, with) && isWhole(path, with);
        } catch (SQLException e) {
            LOG.warn("not whole with the writes beside it: {}", path, e);
            return false;
        }
    }

    /** Whether all that was written in one is in the other. */
    static boolean goesOnFrom(Database before, Database after) throws SQLException {
        boolean[] missing = {!before.text("logbook/all").equals(after.text("logbook/all"))};
        before.each(
                "amendment/heads",
                head -> missing[0] |=
                        after.number("amendment/exists", head.getString(1), head.getLong(2), head.getString(3)) == 0);
        return !missing[0];
    }

    private boolean isWhole(Path path, Database database) {
        return new Verification(path, home.canonical).of(database, Facts.none()).isEmpty();
    }

    /**
     * What SQLite sees in the file.
     *
     * @return the version of its schema, which may be newer than ours; or why it cannot be opened
     */
    Outcome<Integer> inside(Path path, Database database) {
        try {
            if (database.number("file/application_id") != LogbookSchema.APPLICATION_ID) {
                return Outcome.didNot(Problem.of(ProblemKind.NOT_A_LOGBOOK, path, "a database of another program"));
            }
            int version = (int) database.number("file/user_version");
            boolean newer = version > home.schema.version();
            if (newer ? !hasOurTables(database) : !home.schema.isThatOf(version, database)) {
                return Outcome.didNot(Problem.of(ProblemKind.LOGBOOK_ALTERED, path));
            }
            String fault = database.text("file/quick_check");
            if (!fault.equals("ok")) {
                LOG.warn("a logbook is damaged: {} {}", path, fault);
                return Outcome.didNot(Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, Faults.TORN));
            }
            return Outcome.worked(version);
        } catch (SQLException e) {
            return Outcome.didNot(Faults.reading(path, e));
        }
    }

    /** Whether a newer file has a true table, no view, for every kind of record we know. */
    private static boolean hasOurTables(Database database) throws SQLException {
        for (RecordType<?> type : RecordTypes.all()) {
            if (database.number("file/has_table", type.name()) != 1) {
                return false;
            }
        }
        return true;
    }
}
