package witnessmark.cost;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Refund;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.ToSettle;
import witnessmark.cost.result.ToSettle.What;
import witnessmark.cost.result.Unsettled;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;

/** What money is not settled yet: what can be asked back, what is to be charged, what is kept for later. */
public final class Settling {
    private final CostBook book;
    private final List<ToSettle> rows = new ArrayList<>();

    private Settling(CostBook book) {
        this.book = book;
    }

    /**
     * Everything that is open on a day. What is to be charged is that season's; the rest waits whenever it was paid.
     *
     * @param facts everything written
     * @param book all costs up to the day
     * @param asOf the day
     * @param season which season
     */
    public static Unsettled of(Facts facts, CostBook book, AsOf asOf, SeasonSpan season) {
        Settling settling = new Settling(book);
        Refunds.open(facts, asOf)
                .forEach(refund -> settling.add(refund.line(), what(refund), refund.by(), refund.still()));
        facts
                .of(CostLine.class)
                .where(line -> season.has(line.day())
                        && !line.day().isAfter(asOf.day())
                        && !line.customer().isBlank()
                        && line.chargedOn() == null)
                .stream()
                .sorted(Comparator.comparing(
                        (Entry<CostLine> line) -> line.fact().day()))
                .forEach(line ->
                        settling.add(line, What.CHARGE, null, line.fact().paid()));
        book.pieces().stream()
                .filter(piece -> piece.place() == Place.KEPT)
                .map(Piece::line)
                .distinct()
                .map(id -> facts.of(CostLine.class).find(id).orElseThrow())
                .forEach(line -> settling.add(
                        line, What.USE, line.fact().carriedUntil(), line.fact().carried()));
        settling.rows.sort(Comparator.comparing(row -> row.until() == null ? LocalDate.MAX : row.until()));
        return new Unsettled(book.home(), settling.rows);
    }

    private static What what(Refund refund) {
        return refund.late() ? What.ASK_BACK_LATE : refund.begun() ? What.ASK_BACK_REST : What.ASK_BACK;
    }

    private void add(Entry<CostLine> line, What what, @Nullable LocalDate until, Money amount) {
        Money home = Costs.home(amount, line.fact().rate(), book.home()).orElse(null);
        rows.add(new ToSettle(line, what, until, amount, home));
    }
}
