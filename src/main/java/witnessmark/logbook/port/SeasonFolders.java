package witnessmark.logbook.port;

import java.nio.file.Path;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.outcome.Outcome;

/** Reads and writes season folders: a logbook as plain files that a person can open, compare and edit. */
public interface SeasonFolders {
    /**
     * Reads a folder against what the logbook holds already. Rows whose id and content the logbook has are left out.
     *
     * @param known what references may point to besides the folder's own rows
     * @return the entries to write, each after those it refers to; worked-except names the rows left out; did-not
     *     when the folder as a whole cannot be taken
     */
    Outcome<List<Entry<?>>> read(Path folder, Facts known);

    /**
     * Writes everything to an empty or new folder. The same facts always give the same bytes.
     *
     * @return the number of rows written
     */
    Outcome<Integer> write(Facts facts, Path folder);
}
