package witnessmark.logbook.port;

import java.nio.file.Path;
import witnessmark.outcome.Outcome;

/** Keeps pages for printing. */
public interface PaperFiles {
    /**
     * Writes the pages to a file, or puts them in the place of pages this program wrote before. Any other file stays.
     *
     * @return how many pages were written
     */
    Outcome<Integer> write(Paper paper, Path file);
}
