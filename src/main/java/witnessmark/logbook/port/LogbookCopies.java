package witnessmark.logbook.port;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.history.Damage;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Moment;

/** Copies of logbooks: which there are, whether they are good, and getting one back. Everything here blocks. */
public interface LogbookCopies {
    /**
     * One copy as it is listed.
     *
     * @param file where it is
     * @param logbook the identity of the logbook it is of
     * @param name the team; the name of the file while no team is written down
     * @param made when the copy was made
     * @param records how many entries it holds, those struck out too
     * @param saved when something was last saved in it; null when nothing was
     * @param lastRun the last run that counts in it; null when there is none
     */
    record Copy(
            Path file,
            String logbook,
            String name,
            Instant made,
            long records,
            @Nullable Instant saved,
            @Nullable Moment lastRun) {}

    /**
     * A logbook brought back.
     *
     * @param logbook the file
     * @param before where the one is that stood there; null when there was none
     * @param lacks what that one holds and this one does not; null when this one holds all, or when that cannot be read
     * @param digest SHA-256 over the history, the same as that of the copy
     */
    record Restored(
            Path logbook, @Nullable Path before, @Nullable Lacks lacks, String digest) {}

    /**
     * Changes that one logbook has and another has not.
     *
     * @param changes how many, or more
     * @param last when the last of them was written
     */
    record Lacks(long changes, Moment last) {}

    /**
     * What became of a logbook that could not be opened.
     *
     * @param logbook the new file
     * @param whole how many records are in it as they were written
     * @param doubtful how many are in it struck out, since they may not be what was written
     * @param left what could not be read, and what is doubtful
     */
    record Salvaged(Path logbook, int whole, int doubtful, List<Problem> left) {
        public Salvaged {
            left = List.copyOf(left);
        }
    }

    /**
     * Words for the history of salvaged records.
     *
     * @param who goes with every one
     * @param why what is being done
     * @param doubtful reason with which those are struck out that may not be as they were written
     */
    record SalvageWords(String who, String why, String doubtful) {}

    /** The folder on this computer in which the backups of all logbooks lie; it may not be there yet. */
    Path folder();

    /** The backups of all logbooks in the data folder, the newest first. */
    List<Copy> kept();

    /**
     * The logbooks and copies at a place, the newest first: the file itself, or what lies in the folder and in folders in
     * it down to the third.
     */
    Outcome<List<Copy>> in(Path place);

    /** Which logbook a file is; empty when it cannot be told. */
    Optional<String> identity(Path file);

    /** What the file of a logbook is called without its ending; of a copy, what the file was called that it was made of. */
    String nameOf(Path logbookOrCopy);

    /** What is wrong with a copy; empty when every record is as it was written. */
    List<Problem> check(Path copy);

    /** Brings a copy back as a file of its own; a file that is there already is never written over. */
    Outcome<Restored> restore(Path copy, Path to);

    /**
     * Brings a copy back in the place of a logbook, which is kept beside it under another name. That logbook must not be
     * open.
     */
    Outcome<Restored> replace(Path copy, Path present);

    /** Says which records of a damaged or altered logbook are hit. Nothing is written. */
    Outcome<Damage> look(Path damaged);

    /** Reads what can be read of a damaged or altered logbook into a new file. The old one stays as it is. */
    Outcome<Salvaged> salvage(Path damaged, Path to, SalvageWords words);
}
