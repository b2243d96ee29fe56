package witnessmark.logbook;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.RowsRead;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Takes a season folder into the logbook in one change. Nothing is taken when a row is bad, unless the user says that
 * the good rows are to be kept; and where the logbook has another value than the folder, the logbook keeps its own
 * unless the user asks for the folder's: a folder may be older than what was corrected since.
 */
public final class ImportSeason {
    /**
     * A folder that was read and looked at, not yet written.
     *
     * @param keeping what is taken when the logbook keeps its own values; what differs is among its problems
     * @param taking what is taken when the folder's values are wanted in their place
     * @param same rows that the logbook has as the folder has them
     * @param differing rows of which the logbook has other values
     * @param unread the tables of which no row could be read, in the order of their problems
     */
    public record Reading(Plan keeping, Plan taking, int same, int differing, List<String> unread) {
        public Reading {
            unread = List.copyOf(unread);
        }
    }

    /**
     * What a choice comes to.
     *
     * @param entries what would be written
     * @param kept the bytes that go with them, and those that entries of the logbook name and it had not got
     * @param photos how many of these are photos; the others are samples of traces
     * @param problems what stops or is queried, each with its place
     * @param leftOut rows of the folder that cannot be taken
     */
    public record Plan(List<Entry<?>> entries, List<Kept> kept, int photos, List<Problem> problems, int leftOut) {
        public Plan {
            entries = List.copyOf(entries);
            kept = List.copyOf(kept);
            problems = List.copyOf(problems);
        }

        /** How many traces come with the samples behind their curves. */
        public int samples() {
            return kept.size() - photos;
        }

        /** Whether there is anything to write. */
        public boolean any() {
            return !entries.isEmpty() || !kept.isEmpty();
        }

        /** Whether a row was left out. */
        public boolean stops() {
            return problems.stream().anyMatch(Problem::stops);
        }
    }

    /** What was heard while a folder was read. */
    private static final class Rows implements RowsRead {
        private final Map<UUID, Place> places = new HashMap<>();
        private int same;
        private int met;

        @Override
        public void stands(UUID id, Place place) {
            places.put(id, place);
        }

        @Override
        public void same() {
            same++;
        }

        @Override
        public void met(int rows) {
            met += rows;
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
        Rows rows = new Rows();
        Outcome<List<Entry<?>>> read = folders.read(folder, known, rows);
        return read.didWork()
                ? Outcome.worked(reading(
                        known,
                        read.orThrow(),
                        read.problems(),
                        rows,
                        today,
                        BesideRows.of(folders, folder, desk.logbook(), read.orThrow())))
                : Outcome.didNot(read.problems());
    }

    private static Reading reading(
            Facts known, List<Entry<?>> read, List<Problem> found, Rows rows, LocalDate today, BesideRows beside) {
        GoodRows good = new GoodRows(known, rows.places, new AsOf(today, Desk.zoneOf(known.with(read))));
        Differences differences = new Differences(known, known.with(read), rows.places);
        List<Entry<?>> fresh = new ArrayList<>();
        List<Entry<?>> differing = new ArrayList<>();
        read.forEach(entry -> (differences.inLogbook(entry) ? differing : fresh).add(entry));
        Set<Place> named = differing.stream()
                .flatMap(entry -> Optional.ofNullable(rows.places.get(entry.id().value())).stream())
                .collect(Collectors.toSet());
        List<String> unread = unread(found, rows.places);

        List<Problem> problems = new ArrayList<>(found);
        problems.removeIf(problem -> takesName(problem, named));
        List<Entry<?>> kept = good.of(good.freelyNamed(fresh, problems), problems);
        differing.forEach(entry -> problems.addAll(differences.of(entry)));
        int out = rows.met - rows.same - differing.size() - kept.size();
        problems.addAll(beside.problems(kept));
        List<Kept> withKept = beside.with(kept);
        Plan keeping = new Plan(kept, withKept, beside.photos(withKept), told(problems, unread), out);

        List<Problem> all = new ArrayList<>(found);
        Set<Place> refused = new HashSet<>();
        found.stream().filter(problem -> takesName(problem, named)).forEach(problem -> refused.add(row(problem)));
        List<Entry<?>> wanted = new ArrayList<>(read);
        wanted.removeIf(entry -> refused.contains(rows.places.get(entry.id().value())));
        List<Entry<?>> taken = good.of(wanted, all);
        all.addAll(beside.problems(taken));
        List<Kept> withTaken = beside.with(taken);
        Plan taking = new Plan(
                taken, withTaken, beside.photos(withTaken), told(all, unread), rows.met - rows.same - taken.size());
        return new Reading(keeping, taking, rows.same, differing.size(), unread);
    }

    /** Engines look incomplete while their parts are left out: what only is odd is told once all is read. */
    private static List<Problem> told(List<Problem> problems, List<String> unread) {
        return unread.isEmpty()
                ? problems
                : problems.stream().filter(Problem::stops).toList();
    }

    /** Whether a row of the logbook's cannot have its name from the folder. */
    private static boolean takesName(Problem problem, Set<Place> rows) {
        return problem.kind() == ProblemKind.NAME_TAKEN && rows.contains(row(problem));
    }

    private static @Nullable Place row(Problem problem) {
        Place place = problem.place();
        return place == null ? null : place.in(null);
    }

    /** A table with a fault, of which no row has a place, was not read. Rows that only wait are no fault of theirs. */
    private static List<String> unread(List<Problem> problems, Map<UUID, Place> places) {
        Set<String> readAtAll = places.values().stream().map(Place::file).collect(Collectors.toSet());
        return problems.stream()
                .filter(problem -> problem.kind() != ProblemKind.ROWS_WAIT)
                .flatMap(problem -> Optional.ofNullable(problem.place()).stream())
                .map(Place::file)
                .filter(file ->
                        RecordTypes.all().stream().anyMatch(type -> type.file().equals(file)))
                .filter(file -> !readAtAll.contains(file))
                .distinct()
                .toList();
    }

    /**
     * Writes what was read, after a backup of what the logbook holds: without one nothing is written.
     *
     * @param plan one of the two of a reading
     * @param keepGoodRows whether the good rows are wanted although others were left out
     * @param from where the rows are from, in words; the history names it as who wrote them
     * @param why the words for the history
     * @return what was written; did-not with the problems when rows are bad and the good ones are not wanted
     */
    public Outcome<Written> write(Plan plan, boolean keepGoodRows, String from, String why) {
        if (plan.stops() && !keepGoodRows) {
            return Outcome.didNot(plan.problems());
        }
        boolean empty = RecordTypes.all().stream()
                .allMatch(type -> desk.logbook().facts().of(type.kind()).size() == 0);
        return empty
                ? writeUnkept(plan, from, why)
                : desk.logbook().backUp().then(kept -> writeUnkept(plan, from, why));
    }

    /** The same without a backup, where all came out of folders. */
    Outcome<Written> writeUnkept(Plan plan, String from, String why) {
        return desk.writeFrom(from, why, plan.entries(), plan.kept());
    }
}
