package witnessmark.logbook.port;

import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.function.BiConsumer;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;

/** Reads and writes season folders: a logbook as plain files that a person can open, compare and edit. */
public interface SeasonFolders {
    /**
     * Reads a folder against what the logbook holds already. Rows whose id and content the logbook has are left out.
     *
     * @param known what references may point to besides the folder's own rows
     * @param places told the id of every row that could be read, and where it stands
     * @return the entries to write, each after those it refers to; worked-except names the rows left out; did-not
     *     when the folder as a whole cannot be taken
     */
    Outcome<List<Entry<?>>> read(Path folder, Facts known, BiConsumer<UUID, Place> places);

    /** The same, where nobody asks where a row stands. */
    default Outcome<List<Entry<?>>> read(Path folder, Facts known) {
        return read(folder, known, (id, place) -> {});
    }

    /**
     * Writes everything to an empty or new folder. The same facts always give the same bytes.
     *
     * @return the number of rows written
     */
    Outcome<Integer> write(Facts facts, Path folder);
}
