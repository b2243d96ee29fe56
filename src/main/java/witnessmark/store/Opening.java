package witnessmark.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Opens a logbook file step by step: looks at it from outside, takes the lock, looks at its first bytes, lets SQLite
 * look at it without writing, brings an older one to the newest form after a backup, and only then opens it to write.
 */
final class Opening {
    private static final Logger LOG = LoggerFactory.getLogger(Opening.class);

    /** A logbook of fifty seasons is looked through in seconds; what takes longer is made to. */
    private static final Duration LONGEST = Duration.ofMinutes(2);

    private final Home home;
    private final Probe probe;
    /** Locks held elsewhere in this process; see {@link SideLock#take}. */
    private final List<FileChannel> neverClosed = new ArrayList<>();

    Opening(Home home) {
        this.home = home;
        this.probe = new Probe(home);
    }

    Outcome<Logbook> open(Path asked) {
        return open(asked, false);
    }

    /** Opens a file made just now, in which there is nothing to back up yet. */
    Outcome<Logbook> openNew(Path made) {
        return open(made, true);
    }

    private synchronized Outcome<Logbook> open(Path asked, boolean madeNow) {
        Problem outside = probe.outside(asked);
        if (outside != null) {
            return Outcome.didNot(outside);
        }
        try {
            Path path = asked.toRealPath();
            Problem header = home.isOpenHere(path) ? null : Probe.header(path);
            if (header != null) {
                return Outcome.didNot(header); // before anything is made beside it
            }
            if (home.isKeptCopy(path)) {
                Instant changed = Files.getLastModifiedTime(path).toInstant();
                Instant made = CopyName.of(path).map(CopyName::made).orElse(changed);
                Moment told = Moment.of(made, ZoneId.systemDefault());
                return readOnly(path, Problem.of(ProblemKind.LOGBOOK_IS_COPY, path, told), true);
            }
            if (!Files.isWritable(path) || !Files.isWritable(SafeFiles.folderOf(path))) {
                return readOnly(path, Problem.of(ProblemKind.PLACE_READ_ONLY, path), true);
            }
            SideLock.Try tried;
            try {
                tried = SideLock.take(path, held(), neverClosed);
            } catch (IOException e) {
                LOG.warn("no lock can be had beside {}", path, e);
                return readOnly(path, Faults.writing(path, e), true);
            }
            SideLock lock = tried.lock();
            if (lock == null) {
                return readOnly(path, inUse(path, tried.by()), false);
            }
            return locked(path, lock, madeNow);
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, asked, Faults.words(e)));
        }
    }

    private SideLock.Held held() {
        return new SideLock.Held(home.holder.host(), home.holder.person(), home.clock.getAsLong());
    }

    /** Takes the lock of a logbook that is not opened, while its file is exchanged. */
    synchronized SideLock.Try lock(Path path) throws IOException {
        return SideLock.take(path, held(), neverClosed);
    }

    static Problem inUse(Path path, SideLock.@Nullable Held by) {
        SideLock.Held held = by == null ? SideLock.Held.of("") : by;
        Moment since = Moment.of(Instant.ofEpochMilli(held.sinceMillis()), ZoneId.systemDefault());
        return Problem.of(ProblemKind.LOGBOOK_IN_USE, path, held.host(), held.person(), since);
    }

    private Outcome<Logbook> locked(Path path, SideLock lock, boolean madeNow) {
        Outcome<Logbook> opened = null;
        try {
            opened = writable(path, lock, madeNow);
            return opened;
        } finally {
            if (opened == null
                    || !opened.didWork()
                    || opened.orThrow().readOnly().isPresent()) {
                lock.close();
            }
        }
    }

    private Outcome<Logbook> writable(Path path, SideLock lock, boolean madeNow) {
        boolean leftOpen = Probe.hasLog(path);
        Outcome<Integer> probed = probed(path);
        if (!probed.didWork()) {
            return Outcome.didNot(probed.problems());
        }
        int version = probed.orThrow();
        if (version > home.schema.version()) {
            return readOnly(path, newer(path, version), true);
        }
        List<Problem> beside = new ArrayList<>();
        try {
            if (version < home.schema.version()) {
                Outcome<Path> backup = backupBefore(path);
                if (!backup.didWork()) {
                    return Outcome.didNot(backup.problems());
                }
                home.schema.migrate(path, version);
            }
            SqliteLogbook logbook = SqliteLogbook.toWrite(home, path, lock, leftOpen);
            beside.addAll(logbook.missing());
            if (!madeNow) {
                beside.addAll(logbook.backUpIfStale());
            }
            beside.addAll(keptAside(path, logbook));
            return beside.isEmpty() ? Outcome.worked(logbook) : new Outcome.WorkedExcept<>(logbook, beside);
        } catch (SQLException e) {
            LOG.warn("a logbook cannot be opened: {}", path, e);
            return Outcome.didNot(Faults.reading(path, e));
        } catch (IllegalArgumentException e) {
            LOG.warn("a logbook holds what cannot be: {}", path, e);
            return Outcome.didNot(damaged(path, e));
        }
    }

    private List<Problem> keptAside(Path path, Logbook logbook) {
        EmergencyJournal journal = home.journal();
        journal.settle(path, logbook.identity(), logbook.facts());
        int waiting = journal.waiting(path, logbook.identity(), logbook.facts()).size();
        return waiting == 0 ? List.of() : List.of(Problem.of(ProblemKind.ENTRIES_KEPT_ASIDE, waiting, journal.file()));
    }

    private Outcome<Integer> probed(Path path) {
        try (Database database = Probe.hasLog(path) ? home.connections.reader(path) : home.connections.frozen(path)) {
            database.within(LONGEST);
            Outcome<Integer> inside = probe.inside(path, database);
            boolean ours = inside.didWork() && inside.orThrow() == home.schema.version();
            return (ours || !inside.didWork()) && probe.hasLogOfAnother(path)
                    ? Outcome.didNot(Problem.of(ProblemKind.LOG_OF_ANOTHER, path, Probe.log(path)))
                    : inside;
        } catch (SQLException e) {
            return Outcome.didNot(Faults.reading(path, e));
        }
    }

    private Outcome<Path> backupBefore(Path path) {
        try (Database database = home.connections.reader(path)) {
            String id = Home.idOf(database);
            return new Backups(home.backupFolder(id), home.clock, home.connections, this::faultsOf)
                    .make(path, database);
        } catch (SQLException e) {
            return Outcome.didNot(Faults.reading(path, e));
        }
    }

    /** The tables of an older form are not ours, so that a copy of it is checked as a file only. */
    private List<Problem> faultsOf(Path file, Database database) {
        return probe.inside(file, database).problems();
    }

    /**
     * Opens to read alone.
     *
     * @param still nobody else in this process has the file open, and nobody may write it meanwhile
     */
    private Outcome<Logbook> readOnly(Path path, Problem why, boolean still) {
        try {
            Database database =
                    still && !Probe.hasLog(path) ? home.connections.frozen(path) : home.connections.reader(path);
            boolean kept = false;
            try {
                database.within(LONGEST);
                Outcome<Integer> probed = probe.inside(path, database);
                if (!probed.didWork()) {
                    return Outcome.didNot(probed.problems());
                }
                int version = probed.orThrow();
                Problem reason = version > home.schema.version() ? newer(path, version) : why;
                if (version < home.schema.version()) {
                    return Outcome.didNot(why);
                }
                database.anyTime();
                SqliteLogbook logbook = SqliteLogbook.toRead(home, path, database, reason);
                kept = true;
                List<Problem> beside = new ArrayList<>(List.of(reason));
                beside.addAll(logbook.missing());
                return new Outcome.WorkedExcept<>(logbook, beside);
            } finally {
                if (!kept) {
                    database.close();
                }
            }
        } catch (SQLException e) {
            LOG.warn("a logbook cannot be read: {}", path, e);
            return Outcome.didNot(Faults.reading(path, e));
        } catch (IllegalArgumentException e) {
            LOG.warn("a logbook holds what cannot be: {}", path, e);
            return Outcome.didNot(why.kind() == ProblemKind.LOGBOOK_NEWER ? why : damaged(path, e));
        }
    }

    private Problem newer(Path path, int version) {
        return Problem.of(ProblemKind.LOGBOOK_NEWER, path, version, home.schema.version());
    }

    private static Problem damaged(Path path, IllegalArgumentException e) {
        return Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, String.valueOf(e.getMessage()));
    }
}
