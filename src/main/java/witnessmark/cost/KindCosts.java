package witnessmark.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.KindCost;
import witnessmark.cost.result.KindCost.Rest;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Switches;
import witnessmark.domain.CostLine;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.PartKind;
import witnessmark.quantity.Money;

/**
 * What went on each kind of part, failed or not. A cost that names a part is that kind's, whatever brought it; what else a
 * failure cost is of the kinds that failed, shared evenly to the minor unit; the rest names no kind of part. So the kinds
 * are together the failures the switches take in, racing when nothing broke, and own work where it is counted.
 */
public final class KindCosts {
    private final Facts facts;
    private final CostBook book;
    private final PartKinds kinds;
    private final Map<Optional<PartKind>, Sorted> sorted = new LinkedHashMap<>();

    private KindCosts(Facts facts, CostBook book) {
        this.facts = facts;
        this.book = book;
        this.kinds = new PartKinds(facts);
    }

    /**
     * Each kind that money went on, dearest first; what names none comes last.
     *
     * @param facts everything written
     * @param book all costs up to the day
     * @param season which season
     * @param failures what each incident took of that season
     * @param switches what of failures is counted, and whether own work is
     */
    public static List<KindCost> of(
            Facts facts, CostBook book, SeasonSpan season, List<IncidentCost> failures, Switches switches) {
        KindCosts costs = new KindCosts(facts, book);
        book.pieces().stream()
                .filter(piece -> season.has(piece.day()) && whenNothingBroke(piece, switches))
                .forEach(piece -> costs.of(costs.kind(piece)).due.add(piece));
        failures.forEach(failure -> costs.add(failure, switches));
        return costs.sorted.entrySet().stream()
                .map(entry -> entry.getValue().done(entry.getKey().orElse(null), book))
                .sorted(Comparator.comparing((KindCost cost) -> cost.kind() == null)
                        .thenComparing(cost -> -cost.together().minor()))
                .toList();
    }

    /** A spoiled weekend is racing unless it is asked for. */
    private static boolean whenNothingBroke(Piece piece, Switches switches) {
        return piece.place() == Place.RUNNING
                || piece.place() == Place.OWN_WORK && switches.labour()
                || piece.place() == Place.SPOILED && !switches.spoiled();
    }

    private void add(IncidentCost failure, Switches switches) {
        List<Piece> rest = new ArrayList<>();
        for (Piece piece : failure.pieces()) {
            Optional<PartKind> kind = kind(piece);
            if (switches.takes(piece) && kind.isPresent()) {
                (piece.planned() ? of(kind).due : of(kind).bought).add(piece);
            } else if (switches.takes(piece)) {
                rest.add(piece);
            }
        }
        share(failure.incident(), rest);
    }

    private void share(Id<Incident> incident, List<Piece> pieces) {
        Money whole = pieces.stream().map(Piece::amount).reduce(Money.none(book.home()), Money::plus);
        if (whole.isNone()) {
            return;
        }
        List<Optional<PartKind>> failed =
                kinds.failed(incident).stream().map(Optional::of).toList();
        List<Optional<PartKind>> under = failed.isEmpty() ? List.of(Optional.empty()) : failed;
        List<Long> shares = LargestRemainder.split(
                whole.minor(), under.stream().map(kind -> 1L).toList());
        for (int i = 0; i < under.size(); i++) {
            Money share = new Money(shares.get(i), book.home());
            of(under.get(i)).rest.add(new Rest(incident, pieces, whole, share));
        }
    }

    private Optional<PartKind> kind(Piece piece) {
        return kinds.of(facts.of(CostLine.class).get(piece.line()));
    }

    private Sorted of(Optional<PartKind> kind) {
        return sorted.computeIfAbsent(kind, none -> new Sorted());
    }

    /** What one kind has so far. */
    private static final class Sorted {
        private final List<Piece> due = new ArrayList<>();
        private final List<Piece> bought = new ArrayList<>();
        private final List<Rest> rest = new ArrayList<>();

        KindCost done(@Nullable PartKind kind, CostBook book) {
            return new KindCost(kind, book.home(), due, bought, rest);
        }
    }
}
