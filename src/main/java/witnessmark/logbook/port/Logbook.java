package witnessmark.logbook.port;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import witnessmark.domain.Facts;
import witnessmark.domain.history.Amendment;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/**
 * An open logbook file. {@link #facts()} may be called from any thread; everything else blocks and belongs off the
 * event thread, one call at a time.
 */
public interface Logbook extends AutoCloseable {
    /** Everything written so far; a write publishes the next. */
    Facts facts();

    /**
     * Writes a change in one transaction: its amendments, their chain hashes and the rows. When this returns worked,
     * the change is on the disk.
     *
     * @return what was written, or the problems; then nothing was changed
     */
    Outcome<Written> write(Change change);

    /** The amendments of one record, oldest first. */
    List<Amendment> history(String table, UUID record);

    /** The amendments of one change. */
    List<Amendment> amendments(UUID change);

    /** Every amendment in the logbook, in the order all devices agree on. */
    List<Amendment> history();

    /**
     * What is kept by its SHA-256.
     *
     * @return empty when it is not in this logbook, as after its records came from a season folder without it; did-not
     *     when it cannot be read, or is not what it was
     */
    Outcome<Optional<Kept>> kept(String sha256);

    /** Of everything that is kept the SHA-256. */
    Outcome<List<String>> keptNames();

    /** The photos that lie beside it. */
    Photos photos();

    /** Why nothing can be written, or empty when it can: the file is in use, newer, or in a read-only place. */
    Optional<Problem> readOnly();

    /**
     * Checks the file, every row's checksum, every fold and the chain of amendments.
     *
     * @return what was found; empty when all is as it was written
     */
    List<Problem> verify();

    /** The same, and every photo beside it: takes as long as reading them does. */
    default List<Problem> verifyWithPhotos() {
        List<Problem> found = new ArrayList<>(verify());
        found.addAll(photos().check(facts()));
        return List.copyOf(found);
    }

    /**
     * Copies the logbook to its backup folder and opens the copy to see that it is good. One that has faults itself is
     * copied too, beside the good backups, and so is one whose file was moved away.
     *
     * @return where the copy is; worked-except with what is wrong with the logbook
     */
    Outcome<Path> backUp();

    /** Whether a good backup of it is kept on this computer, of whatever age. */
    boolean hasBackup();

    /**
     * Copies the logbook as it stands in memory and on the disk to a new file, which opens as a logbook. It does so too
     * when the file was moved away or removed while it was open.
     *
     * @return the file; did-not when there is one already or the place cannot be written
     */
    Outcome<Path> copyTo(Path file);

    /** Copies of it in a second place. */
    SecondPlace secondPlace();

    /** Whether the file is no longer where it was opened, or another lies there. */
    boolean isMovedAway();

    /** Whether the program that had it open last ended without closing it. */
    boolean wasLeftOpen();

    /**
     * Goes on without what was seen in it on this computer and is missing ({@code CHANGES_MISSING}), which is told at
     * each opening until then.
     */
    void acceptMissing();

    /** Which logbook it is; every copy of it says the same. */
    String identity();

    Drafts drafts();

    Path path();

    /** Backs up when something was written, then lets go of the file. */
    @Override
    void close();
}
