package witnessmark.logbook.port;

import java.nio.file.Path;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.outcome.Outcome;

/** Reads and writes season folders: a logbook as plain files that a person can open, compare and edit. */
public interface SeasonFolders {
    /**
     * Reads a folder against what the logbook holds already. Rows whose id and content the logbook has are left out. A
     * row of the logbook's that takes a name there which another has is read like any other, with its problem.
     *
     * @param known what references may point to besides the folder's own rows
     * @param told about every row, as it is read
     * @return the entries to write, each after those it refers to; worked-except names the rows left out; did-not
     *     when the folder as a whole cannot be taken
     */
    Outcome<List<Entry<?>>> read(Path folder, Facts known, RowsRead told);

    /** The same, where nobody asks about single rows. */
    default Outcome<List<Entry<?>>> read(Path folder, Facts known) {
        return read(folder, known, RowsRead.NOBODY);
    }

    /**
     * Writes everything to an empty or new folder. The same facts always give the same bytes.
     *
     * @return the number of rows written
     */
    Outcome<Integer> write(Facts facts, Path folder);
}
