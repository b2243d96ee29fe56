package witnessmark.cost;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.ledger.AsOf;

/** What each incident cost. */
public final class Failures {
    private Failures() {}

    /**
     * Every incident up to a day, one that cost nothing included, in the order they happened.
     *
     * @param facts everything written
     * @param book all costs up to that day
     * @param asOf the day
     * @param counted which pieces are asked about, as of one season
     */
    public static List<IncidentCost> all(Facts facts, CostBook book, AsOf asOf, Predicate<Piece> counted) {
        Map<Id<Incident>, List<Piece>> byIncident = new LinkedHashMap<>();
        facts.of(Incident.class)
                .inForce()
                .filter(entry -> asOf.counts(entry.fact().at()))
                .sorted((one, other) -> one.fact().at().compareTo(other.fact().at()))
                .map(Entry::id)
                .forEach(id -> byIncident.put(id, new ArrayList<>()));
        for (Piece piece : book.pieces()) {
            Id<Incident> incident = piece.incident();
            if (incident != null && piece.place().ofFailure() && counted.test(piece)) {
                byIncident.computeIfAbsent(incident, id -> new ArrayList<>()).add(piece);
            }
        }
        Map<Id<Incident>, Set<Place>> written = written(facts, asOf);
        return byIncident.entrySet().stream()
                .map(entry -> new IncidentCost(
                        entry.getKey(),
                        book.home(),
                        entry.getValue(),
                        unwritten(written.getOrDefault(entry.getKey(), Set.of()))))
                .toList();
    }

    private static Set<Place> unwritten(Set<Place> written) {
        Set<Place> unwritten = EnumSet.of(Place.CASH, Place.LABOUR);
        unwritten.removeAll(written);
        return unwritten;
    }

    /** Of cash out and own labour, what somebody has written a cost of, with or without a rate. */
    private static Map<Id<Incident>, Set<Place>> written(Facts facts, AsOf asOf) {
        Map<Id<Incident>, Set<Place>> written = new HashMap<>();
        facts.of(CostLine.class)
                .inForce()
                .map(Entry::fact)
                .filter(line -> line.incident() != null && !line.day().isAfter(asOf.day()))
                .forEach(line -> written.computeIfAbsent(line.incident(), id -> EnumSet.noneOf(Place.class))
                        .add(line.basis() == CostBasis.VALUED ? Place.LABOUR : Place.CASH));
        return written;
    }
}
