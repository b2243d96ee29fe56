package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Supplier;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/** A copy of a logbook that becomes one of its own: made aside, then named. */
final class NewCopy {
    private final Path to;
    private final Path from;

    /** Copies into an empty file. */
    interface Copying {
        Outcome<Path> into(Path aside) throws SQLException;
    }

    /** @param from the logbook, for what is said of it */
    NewCopy(Path to, Path from) {
        this.to = to;
        this.from = from;
    }

    /**
     * @param seen there before; a copy begins anew
     * @param beside brings what lies beside the logbook, and tells what did not come along
     * @return where it is; did-not when there is a file already or the place cannot be written
     */
    Outcome<Path> of(Witness seen, Copying copying, Supplier<List<Problem>> beside) {
        Problem inTheWay = Probe.inTheWay(to);
        if (inTheWay != null) {
            return Outcome.didNot(inTheWay);
        }
        Path aside = to.resolveSibling(to.getFileName() + ".new");
        try {
            Outcome<Path> made = copying.into(aside);
            if (!made.didWork()) {
                return made;
            }
            seen.forget();
            Files.move(aside, to);
            SafeFiles.syncFolder(SafeFiles.folderOf(to));
            return made.then(any -> Outcome.of(to, beside.get()));
        } catch (IOException e) {
            return Outcome.didNot(Faults.writing(to, e));
        } catch (SQLException e) {
            return Outcome.didNot(Faults.reading(from, e));
        } finally {
            SafeFiles.remove(aside);
        }
    }
}
