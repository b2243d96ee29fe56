package witnessmark.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.LogbookCopies.Lacks;
import witnessmark.logbook.port.LogbookCopies.Restored;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Brings a copy back: checked first, written aside, brought to the disk, checked again against the copy's digest, and
 * only then named. What stood in its place has another name before that.
 */
final class Restoring {
    private static final Logger LOG = LoggerFactory.getLogger(Restoring.class);

    /** What SQLite takes for the last writes to a file. */
    private static final List<String> BESIDE = List.of("-wal", "-journal");

    private final Home home;
    private final Probe probe;
    private final Opening opening;

    Restoring(Home home, Opening opening) {
        this.home = home;
        this.probe = new Probe(home);
        this.opening = opening;
    }

    /** A copy as it lies there, with the writes that were left beside it if any were. */
    static Database open(Home home, Path copy) throws SQLException {
        return Probe.hasLog(copy) || home.isOpenHere(copy)
                ? home.connections.reader(copy)
                : home.connections.frozen(copy);
    }

    Outcome<Restored> restore(Path copy, Path to) {
        Path file = to.toAbsolutePath().normalize();
        Problem inTheWay = Probe.inTheWay(file);
        if (inTheWay != null) {
            return Outcome.didNot(inTheWay);
        }
        Path aside = aside(file);
        try {
            Outcome<String> made = copy(copy, aside);
            if (!made.didWork()) {
                return Outcome.didNot(made.problems());
            }
            forgetSeen(aside, file);
            Files.move(aside, file); // refuses where somebody made one meanwhile
            SafeFiles.syncFolder(SafeFiles.folderOf(file));
            return Outcome.of(new Restored(file, null, null, made.orThrow()), photos(copy, file));
        } catch (FileAlreadyExistsException e) {
            return Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, file));
        } catch (IOException e) {
            return Outcome.didNot(Faults.writing(file, e));
        } finally {
            SafeFiles.remove(aside);
        }
    }

    Outcome<Restored> replace(Path copy, Path present) {
        if (!Files.exists(present)) {
            return restore(copy, present);
        }
        Path aside = aside(present.toAbsolutePath());
        try {
            Path file = present.toRealPath();
            aside = aside(file);
            if (Files.isSameFile(copy, file)) {
                return Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, file));
            }
            SideLock.Try tried = opening.lock(file);
            SideLock lock = tried.lock();
            if (lock == null) {
                return Outcome.didNot(Opening.inUse(file, tried.by()));
            }
            try (lock) {
                Outcome<String> made = copy(copy, aside);
                if (!made.didWork()) {
                    return Outcome.didNot(made.problems());
                }
                Path before = exchanged(file, aside);
                return Outcome.of(
                        new Restored(file, before, lacking(before, file), made.orThrow()), photos(copy, file));
            }
        } catch (IOException e) {
            return Outcome.didNot(Faults.writing(present, e));
        } finally {
            SafeFiles.remove(aside);
        }
    }

    /**
     * Gives the present file another name first, and what lies beside it with it; then puts the new one in its place.
     * Cut short anywhere, the old one is whole under one of the two names.
     *
     * @return the other name
     */
    private Path exchanged(Path file, Path aside) throws IOException {
        forgetSeen(aside, file); // first: cut short behind it, the older one would be told to lack what it is to lack
        Path before = file.resolveSibling(CopyName.replaced(file, Instant.ofEpochMilli(home.clock.getAsLong())));
        List<Path> left = new ArrayList<>();
        for (String ending : BESIDE) {
            Path beside = file.resolveSibling(file.getFileName() + ending);
            if (Files.exists(beside)) {
                SafeFiles.copy(beside, before.resolveSibling(before.getFileName() + ending));
                left.add(beside);
            }
        }
        try {
            Files.createLink(before, file);
            SafeFiles.moveOver(aside, file);
        } catch (UnsupportedOperationException | FileAlreadyExistsException e) {
            throw new IOException("no second name can be given to " + file, e);
        } catch (java.nio.file.FileSystemException e) {
            LOG.info("no second name here, so the file is moved: {}", file, e);
            Files.move(file, before);
            SafeFiles.moveOver(aside, file);
        }
        for (Path beside : left) {
            Files.deleteIfExists(beside); // else it would be taken for writes to the restored one
        }
        Files.deleteIfExists(file.resolveSibling(file.getFileName() + "-shm"));
        return before;
    }

    /** Between two files that lie still. One that was damaged often cannot say what it held. */
    private @Nullable Lacks lacking(Path before, Path restored) {
        try (Database was = open(home, before);
                Database is = home.connections.frozen(restored)) {
            return ChainEnds.of(was).missingIn(is).map(ChainEnds.Missing::lacks).orElse(null);
        } catch (SQLException e) {
            LOG.info("what the replaced one held cannot be read: {}", before, e);
            return null;
        }
    }

    /** Brings the photos that lie among the copies, or beside a logbook that is a copy itself. */
    static List<Problem> photos(Path copy, Path file) {
        Path to = PhotoFolder.beside(file);
        for (Path from : List.of(copy.resolveSibling(PhotoCopies.FOLDER), PhotoFolder.beside(copy))) {
            PhotoCopies.Left left =
                    PhotoCopies.bring(from, to, new PhotoFolder(from, from, true).names(), PhotoCopies::linked);
            if (left.count() > 0) {
                return List.of(Problem.of(ProblemKind.PHOTOS_NOT_COPIED, left.count(), to, left.said()));
            }
        }
        return List.of();
    }

    /** A copy is put in a place on purpose: what was seen there before is not missing in it. */
    private void forgetSeen(Path copy, Path place) throws IOException {
        try (Database database = home.connections.frozen(copy)) {
            home.witness(Home.idOf(database), place).forget();
        } catch (SQLException e) {
            throw new IOException("what was restored cannot be read", e);
        }
    }

    /** @return the digest, the same in both */
    private Outcome<String> copy(Path copy, Path aside) {
        try (Database source = open(home, copy)) {
            List<Problem> faults = SqliteCopies.faults(home, probe, copy, source);
            if (!faults.isEmpty()) {
                return Outcome.didNot(notGood(copy, faults));
            }
            String digest = Digest.of(source, home.canonical);
            Files.deleteIfExists(aside);
            SafeFiles.createPrivate(aside);
            source.run("logbook/copy", aside.toString());
            SafeFiles.sync(aside);
            String restored = digest(aside);
            return restored.equals(digest)
                    ? Outcome.worked(digest)
                    : Outcome.didNot(
                            Problem.of(ProblemKind.CANNOT_WRITE, aside, "what was written there reads otherwise"));
        } catch (SQLException e) {
            return Outcome.didNot(Faults.isDamage(e) ? Faults.reading(copy, e) : Faults.writing(aside, e));
        } catch (IOException e) {
            return Outcome.didNot(Faults.writing(aside, e));
        }
    }

    /** The digest of a good logbook; empty for one that is not. */
    private String digest(Path file) throws SQLException {
        try (Database database = home.connections.frozen(file)) {
            return SqliteCopies.faults(home, probe, file, database).isEmpty()
                    ? Digest.of(database, home.canonical)
                    : "";
        }
    }

    private static List<Problem> notGood(Path copy, List<Problem> faults) {
        List<Problem> all = new ArrayList<>(List.of(Problem.of(ProblemKind.COPY_NOT_GOOD, copy)));
        all.addAll(faults);
        return all;
    }

    private static Path aside(Path file) {
        return file.resolveSibling(file.getFileName() + ".new");
    }
}
