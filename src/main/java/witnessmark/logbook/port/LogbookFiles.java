package witnessmark.logbook.port;

import java.nio.file.Path;
import witnessmark.outcome.Outcome;

/** Makes and opens logbook files. A file that cannot be opened is left exactly as it is. */
public interface LogbookFiles {
    /**
     * Makes an empty logbook.
     *
     * @return the open logbook, or why not (there is a file already, the place cannot be written)
     */
    Outcome<Logbook> create(Path path);

    /**
     * Opens a logbook. Read-only, with a problem beside it, when it is in use, newer, or in a read-only place. That it
     * lacks what this computer saw in it is told beside it too.
     *
     * @return the open logbook, or why not (no such file, not a logbook, damaged, altered by another hand, beside
     *     writes of another file)
     */
    Outcome<Logbook> open(Path path);

    /** Copies of logbooks, and getting one back. */
    LogbookCopies copies();

    /** What logbooks could not take on this computer. */
    KeptAside keptAside();
}
