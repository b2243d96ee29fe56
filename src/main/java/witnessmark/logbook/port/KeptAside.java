package witnessmark.logbook.port;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import witnessmark.domain.Entry;

/**
 * What a logbook could not take, as when its disk was full or gone: kept as text in the data folder of this computer until
 * somebody enters it or puts it aside. Everything here reads and writes files.
 */
public interface KeptAside {
    /**
     * One entry that waits.
     *
     * @param entry as it was to stand, with the revision it was to have
     * @param name what people call it
     * @param who who wrote it
     * @param why what was being done
     * @param at when it could not be saved; entries of one change have the same
     */
    record Aside(Entry<?> entry, String name, String who, String why, Instant at) {}

    /** What is not in a logbook, neither as it was to stand nor written later; the oldest first. */
    List<Aside> waiting(Logbook logbook);

    /**
     * Does not tell of these any more. The text stays in the file.
     *
     * @return whether that could be noted
     */
    boolean putAside(List<Aside> entries);

    /** The file in which the text is. */
    Path file();
}
