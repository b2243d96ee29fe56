package witnessmark.logbook;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/**
 * Takes a season folder into the logbook in one change. Nothing is taken when a row is bad, unless the user says that
 * the good rows are to be kept.
 */
public final class ImportSeason {
    /**
     * A folder that was read and looked at, not yet written.
     *
     * @param entries what would be written
     * @param problems what stops or is queried
     */
    public record Reading(List<Entry<?>> entries, List<Problem> problems) {
        public Reading {
            entries = List.copyOf(entries);
            problems = List.copyOf(problems);
        }

        /** Whether a row was left out or contradicts another. */
        public boolean stops() {
            return problems.stream().anyMatch(Problem::stops);
        }
    }

    private final Desk desk;
    private final SeasonFolders folders;

    public ImportSeason(Desk desk, SeasonFolders folders) {
        this.desk = desk;
        this.folders = folders;
    }

    /** Reads a folder and checks it against the logbook; writes nothing. */
    public Outcome<Reading> read(Path folder) {
        return readOn(folder, desk.today().day());
    }

    /** The same, taking a day for today. */
    Outcome<Reading> readOn(Path folder, LocalDate today) {
        Facts known = desk.logbook().facts();
        Outcome<List<Entry<?>>> read = folders.read(folder, known);
        if (!read.didWork()) {
            return Outcome.didNot(read.problems());
        }
        List<Entry<?>> entries = read.orThrow();
        List<Problem> problems = new ArrayList<>(read.problems());
        Facts after = known.with(entries);
        problems.addAll(Coherence.forEntries(after, entries, new AsOf(today, Desk.zoneOf(after))));
        return Outcome.worked(new Reading(entries, problems));
    }

    /**
     * Writes what was read.
     *
     * @param keepGoodRows whether the good rows are wanted although others were left out
     * @param why the words for the history
     * @return what was written; did-not with the problems when rows are bad and the good ones are not wanted
     */
    public Outcome<Written> write(Reading reading, boolean keepGoodRows, String why) {
        if (reading.stops() && !keepGoodRows) {
            return Outcome.didNot(reading.problems());
        }
        return desk.write(why, reading.entries());
    }
}
