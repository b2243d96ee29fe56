package witnessmark.desktop.keeping;

import java.nio.file.Path;
import java.time.Instant;

/**
 * A copy as a row.
 *
 * @param file where it is
 * @param made when it was made, as shown
 * @param when by which it is sorted
 * @param name whose logbook it is
 * @param saved when something was last saved in it, as shown
 * @param upTo by which that is sorted
 * @param records how many entries, as shown
 * @param count by which that is sorted
 * @param lastRun the last run in it, as shown
 * @param where on which computer, stick or share it lies, as shown
 * @param good what the check came to, as shown
 */
record CopyLine(
        Path file,
        String made,
        Instant when,
        String name,
        String saved,
        Instant upTo,
        String records,
        long count,
        String lastRun,
        String where,
        String good) {
    CopyLine checked(String found) {
        return new CopyLine(file, made, when, name, saved, upTo, records, count, lastRun, where, found);
    }
}
