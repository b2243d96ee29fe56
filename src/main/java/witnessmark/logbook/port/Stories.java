package witnessmark.logbook.port;

import java.nio.file.Path;
import witnessmark.outcome.Outcome;

/** Reads the table of contents of a season told in chapters. */
public interface Stories {
    /** The story in a folder, or why there is none. */
    Outcome<Story> read(Path folder);
}
