package witnessmark.logbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.ledger.result.Clash;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Which of the rows read from a folder can stand beside what the logbook has. */
final class GoodRows {
    private final Facts known;
    private final Map<UUID, Place> places;
    private final AsOf today;

    /** What tells an entry in force from others of its kind: its name within what it belongs to. */
    private record Name(
            Class<? extends Fact> kind, @Nullable Id<?> within, String name) {}

    /**
     * @param places where a row stands in the folder
     * @param today a run after it is in the future
     */
    GoodRows(Facts known, Map<UUID, Place> places, AsOf today) {
        this.known = known;
        this.places = places;
        this.today = today;
    }

    /** Leaves out what has a name that the logbook gives to another; the problems say so. */
    List<Entry<?>> freelyNamed(List<Entry<?>> rows, List<Problem> problems) {
        Set<Name> taken = new HashSet<>();
        for (RecordType<?> type : RecordTypes.all()) {
            known.of(type.kind()).inForce().forEach(entry -> name(entry).ifPresent(taken::add));
        }
        Map<UUID, String> out = new HashMap<>();
        for (Entry<?> row : rows) {
            Optional<Name> name = row.inForce() ? name(row).filter(taken::contains) : Optional.empty();
            if (name.isPresent()) {
                RecordType<?> type = RecordTypes.of(row.fact().getClass());
                problems.add(at(
                        row,
                        null,
                        Problem.of(
                                ProblemKind.NAME_TAKEN, type.name(), name.get().name())));
                out.put(row.id().value(), type.file());
            }
        }
        return without(rows, out, problems);
    }

    private static Optional<Name> name(Entry<?> entry) {
        Fact fact = entry.fact();
        String name = fact.knownAs();
        return name == null || name.isBlank()
                ? Optional.empty()
                : Optional.of(new Name(fact.getClass(), fact.knownWithin(), name));
    }

    /** Leaves out what contradicts something, and what refers to what was left out, until nothing does. */
    List<Entry<?>> of(List<Entry<?>> rows, List<Problem> problems) {
        List<Entry<?>> left = rows;
        Map<UUID, String> out = new HashMap<>();
        boolean queriesTold = false;
        while (true) {
            Facts after = left.isEmpty() ? known : known.with(left);
            Set<Entry<?>> bad = new HashSet<>();
            for (Clash clash : Coherence.clashes(after, left, today)) {
                if (clash.problem().stops() ? bad.add(clash.entry()) : !queriesTold) {
                    problems.add(at(clash.entry(), clash.field(), clash.problem()));
                }
            }
            queriesTold = true;
            if (bad.isEmpty()) {
                return left;
            }
            bad.forEach(entry -> out.put(
                    entry.id().value(), RecordTypes.of(entry.fact().getClass()).file()));
            left = without(left, out, problems);
        }
    }

    private Problem at(Entry<?> entry, @Nullable String field, Problem problem) {
        Place place = places.get(entry.id().value());
        if (place == null) {
            return problem;
        }
        String column = RecordTypes.of(entry.fact().getClass()).components().stream()
                .filter(component -> component.name().equals(field))
                .map(Component::heading)
                .findFirst()
                .orElse(null);
        return problem.at(place.in(column));
    }

    /**
     * The rows without those that are out, and without those that refer to them, which are counted by file.
     *
     * @param out the rows that are out and the file in which the fault stands; grows by those that wait
     */
    private static List<Entry<?>> without(List<Entry<?>> rows, Map<UUID, String> out, List<Problem> problems) {
        List<Entry<?>> left = new ArrayList<>();
        Map<List<String>, Integer> waiting = new LinkedHashMap<>();
        for (Entry<?> row : rows) {
            UUID id = row.id().value();
            String cause = cause(row, out);
            if (cause != null && !out.containsKey(id)) {
                out.put(id, cause);
                waiting.merge(List.of(RecordTypes.of(row.fact().getClass()).file(), cause), 1, Integer::sum);
            }
            if (!out.containsKey(id)) {
                left.add(row);
            }
        }
        waiting.forEach((files, count) -> problems.add(
                Problem.of(ProblemKind.ROWS_WAIT, count, files.get(1)).at(new Place(files.get(0), 0, null))));
        return left;
    }

    private static @Nullable String cause(Entry<?> row, Map<UUID, String> out) {
        return RecordTypes.of(row.fact().getClass()).components().stream()
                .map(component -> component.value(row.fact()))
                .flatMap(value -> value instanceof Id<?> id && out.containsKey(id.value())
                        ? Optional.of(out.get(id.value())).stream()
                        : Stream.empty())
                .findFirst()
                .orElse(null);
    }
}
