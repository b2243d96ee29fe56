package witnessmark.logbook.port;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
     * What of the bytes wanted lies beside the tables of a folder.
     *
     * @param whole those that are there and are what they are said to be; they are read again when they are written
     * @param missing those that are not there
     * @param others those in whose place something else lies
     */
    record Beside(List<Kept> whole, Set<String> missing, Set<String> others) {
        public Beside {
            whole = List.copyOf(whole);
            missing = Set.copyOf(missing);
            others = Set.copyOf(others);
        }
    }

    /**
     * Looks for bytes that records of a folder name.
     *
     * @param names their SHA-256
     */
    Beside beside(Path folder, Set<String> names);

    /** Where the bytes are that records name: nothing where they are not known. */
    @FunctionalInterface
    interface Bytes {
        Outcome<Optional<Kept>> of(String sha256);
    }

    /**
     * Writes everything to an empty or new folder. The same facts always give the same bytes.
     *
     * @param kept the bytes that facts name
     * @return the number of rows written; worked-except when bytes could not be read and are not in the folder
     */
    Outcome<Integer> write(Facts facts, Bytes kept, Path folder);

    /** The same without the bytes. */
    default Outcome<Integer> write(Facts facts, Path folder) {
        return write(facts, sha256 -> Outcome.worked(Optional.empty()), folder);
    }
}
