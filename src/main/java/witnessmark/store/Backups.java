package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Copies of one logbook in a folder, named after the moment they were made. A copy is made aside by SQLite itself,
 * opened and checked, and only then gets its name; an older one is never written over.
 */
final class Backups {
    private static final Logger LOG = LoggerFactory.getLogger(Backups.class);

    /** Finds faults in a file, the logbook's or a copy's. */
    interface Check {
        List<Problem> of(Path file, Database database);
    }

    private final Path folder;
    private final LongSupplier clock;
    private final Connections connections;
    private final Check check;

    Backups(Path folder, LongSupplier clock, Connections connections, Check check) {
        this.folder = folder;
        this.clock = clock;
        this.connections = connections;
        this.check = check;
    }

    Path folder() {
        return folder;
    }

    /**
     * Makes one more. A logbook that has faults itself is copied too, so that what was written since is in two places;
     * that copy never takes the place of a good one, and the faults are told.
     */
    Outcome<Path> make(Path logbook, Database database) {
        CopyFolder copies = new CopyFolder(folder, logbook);
        Path copy = copies.next(Instant.ofEpochMilli(clock.getAsLong()));
        Path aside = folder.resolve(copy.getFileName() + CopyFolder.ASIDE);
        try {
            copies.sweep(Instant.ofEpochMilli(clock.getAsLong()));
            Outcome<Path> made = aside(logbook, database, aside);
            if (!made.didWork()) {
                return made;
            }
            if (!made.problems().isEmpty()) {
                Path asItIs = folder.resolve(CopyName.asItIs(logbook));
                SafeFiles.moveOver(aside, asItIs);
                return new Outcome.WorkedExcept<>(asItIs, made.problems());
            }
            if (Files.exists(copy)) {
                return Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, copy));
            }
            SafeFiles.moveOver(aside, copy);
            copies.thin(new Thinning(ZoneId.systemDefault()), each -> holdsNothingElse(each, database));
            return Outcome.worked(copy);
        } catch (IOException e) {
            return Outcome.didNot(Faults.writing(folder, e));
        } finally {
            SafeFiles.remove(aside); // what is left of one that failed would only fill the disk
        }
    }

    /**
     * Makes a copy under a name of its own, brought to the disk, opened and checked. Whoever asks removes it.
     *
     * @return where it is; worked-except when the logbook itself has those faults, and the copy with it
     */
    Outcome<Path> aside(Path logbook, Database database, Path aside) {
        try {
            SafeFiles.createPrivateFolder(SafeFiles.folderOf(aside));
            Files.deleteIfExists(aside);
            SafeFiles.createPrivate(aside); // SQLite copies into an empty file, and leaves its permissions
            database.run("logbook/copy", aside.toString());
            SafeFiles.sync(aside);
        } catch (IOException e) {
            return Outcome.didNot(Faults.writing(folder, e));
        } catch (SQLException e) {
            return Outcome.didNot(Faults.isDamage(e) ? Faults.reading(logbook, e) : Faults.writing(folder, e));
        }
        List<Problem> faults = faultsOf(aside);
        if (faults.isEmpty()) {
            return Outcome.worked(aside);
        }
        LOG.error("a backup is not good: {}, {} faults", aside, faults.size());
        List<Problem> own = check.of(logbook, database);
        return own.isEmpty()
                ? Outcome.didNot(
                        Problem.of(ProblemKind.BACKUP_NOT_GOOD, aside, "it does not hold what the logbook holds"))
                : new Outcome.WorkedExcept<>(aside, own);
    }

    /**
     * Whether all that a copy holds is in the logbook too: only such a one may go. One that went another way, as when an older
     * file was put in the place of the logbook, may be the last that holds something; so may one that cannot be read.
     */
    boolean holdsNothingElse(Path copy, Database logbook) {
        try (Database other = connections.frozen(copy)) {
            return Probe.goesOnFrom(other, logbook);
        } catch (SQLException e) {
            LOG.warn("a copy that cannot be read stays: {}", copy, e);
            return false;
        }
    }

    /** What is wrong with a copy that lies still. */
    List<Problem> faultsOf(Path copy) {
        try (Database database = connections.frozen(copy)) {
            return check.of(copy, database);
        } catch (SQLException e) {
            return List.of(Faults.reading(copy, e));
        }
    }

    /** Whether the newest holds what the file does, by its time; never one that is newer than the clock. */
    boolean isFresh(Path logbook) {
        Optional<Instant> newest = newest(logbook);
        try {
            Instant changed = Files.getLastModifiedTime(logbook).toInstant();
            Instant now = Instant.ofEpochMilli(clock.getAsLong());
            boolean fresh = newest.isPresent() && !newest.get().isBefore(changed);
            return fresh && !newest.get().isAfter(now); // else a clock was wrong
        } catch (IOException e) {
            LOG.warn("the file's time cannot be read: {}", logbook, e);
            return true; // what cannot be read now is told where it is read
        }
    }

    /** When the newest of a logbook was made; empty when there is none. */
    Optional<Instant> newest(Path logbook) {
        return new CopyFolder(folder, logbook).newest();
    }
}
