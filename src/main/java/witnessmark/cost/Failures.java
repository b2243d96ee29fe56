package witnessmark.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
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
        return byIncident.entrySet().stream()
                .map(entry -> new IncidentCost(entry.getKey(), book.home(), entry.getValue()))
                .toList();
    }
}
