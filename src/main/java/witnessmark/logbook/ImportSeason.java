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
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.ledger.result.Clash;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Takes a season folder into the logbook in one change. Nothing is taken when a row is bad, unless the user says that
 * the good rows are to be kept.
 */
public final class ImportSeason {
    /**
     * A folder that was read and looked at, not yet written.
     *
     * @param entries what would be written: every good row that the logbook does not have already
     * @param problems what stops or is queried, each with its place
     * @param unread the tables of which no row could be read, in the order of their problems
     */
    public record Reading(List<Entry<?>> entries, List<Problem> problems, List<String> unread) {
        public Reading {
            entries = List.copyOf(entries);
            problems = List.copyOf(problems);
            unread = List.copyOf(unread);
        }

        /** Whether a row was left out. */
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
        Map<UUID, Place> places = new HashMap<>();
        Outcome<List<Entry<?>>> read = folders.read(folder, known, places::put);
        if (!read.didWork()) {
            return Outcome.didNot(read.problems());
        }
        List<Problem> problems = new ArrayList<>(read.problems());
        List<String> unread = unread(problems, places);
        List<Entry<?>> coherent = coherent(known, read.orThrow(), today, places, problems);
        if (!unread.isEmpty()) {
            // engines look incomplete while their parts are left out: what only is odd is told once all is read
            problems.removeIf(problem -> !problem.stops());
        }
        return Outcome.worked(new Reading(coherent, problems, unread));
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

    /** Leaves out what contradicts something, and what refers to what was left out, until nothing does. */
    private static List<Entry<?>> coherent(
            Facts known, List<Entry<?>> read, LocalDate today, Map<UUID, Place> places, List<Problem> problems) {
        List<Entry<?>> left = read;
        Set<UUID> out = new HashSet<>();
        boolean queriesTold = false;
        while (true) {
            Facts after = known.with(left);
            Set<UUID> bad = new HashSet<>();
            for (Clash clash : Coherence.clashes(after, left, new AsOf(today, Desk.zoneOf(after)))) {
                UUID id = clash.entry().id().value();
                if (clash.problem().stops() ? bad.add(id) : !queriesTold) {
                    Place place = places.get(id);
                    problems.add(
                            place == null ? clash.problem() : clash.problem().at(place));
                }
            }
            queriesTold = true;
            if (bad.isEmpty()) {
                return left;
            }
            out.addAll(bad);
            left = without(left, out);
        }
    }

    private static List<Entry<?>> without(List<Entry<?>> entries, Set<UUID> out) {
        List<Entry<?>> left = new ArrayList<>();
        for (Entry<?> entry : entries) {
            if (out.contains(entry.id().value()) || refersTo(entry, out)) {
                out.add(entry.id().value());
            } else {
                left.add(entry);
            }
        }
        return left;
    }

    private static boolean refersTo(Entry<?> entry, Set<UUID> out) {
        return RecordTypes.of(entry.fact().getClass()).components().stream()
                .map(component -> component.value(entry.fact()))
                .anyMatch(value -> value instanceof Id<?> id && out.contains(id.value()));
    }

    /**
     * Writes what was read.
     *
     * @param keepGoodRows whether the good rows are wanted although others were left out
     * @param from where the rows are from, in words; the history names it as who wrote them
     * @param why the words for the history
     * @return what was written; did-not with the problems when rows are bad and the good ones are not wanted
     */
    public Outcome<Written> write(Reading reading, boolean keepGoodRows, String from, String why) {
        if (reading.stops() && !keepGoodRows) {
            return Outcome.didNot(reading.problems());
        }
        return desk.writeFrom(from, why, reading.entries());
    }
}
