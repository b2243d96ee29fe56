package witnessmark.logbook.port;

import java.nio.file.Path;
import witnessmark.outcome.Outcome;

/** Files that banks and bookkeepers write, in whichever way they separate and encode. */
@FunctionalInterface
public interface StatementFiles {
    /** The rows of a file as they stand there; problems when it is no such table. */
    Outcome<StatementRows> read(Path file);
}
