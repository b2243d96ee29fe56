package witnessmark.logbook.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.quantity.Money;

/** Budget and what was spent, side by side, by event and car. */
final class BudgetRows {
    private final Facts facts;
    private final CostBook book;
    private final Map<Key, Money> planned = new LinkedHashMap<>();
    private final Map<Key, Money> spent = new LinkedHashMap<>();

    BudgetRows(Facts facts, CostBook book) {
        this.facts = facts;
        this.book = book;
    }

    List<BudgetRow> of(SeasonSpan season) {
        for (Entry<BudgetLine> line : facts.of(BudgetLine.class).where(each -> season.has(each.day()))) {
            BigDecimal rate = line.fact().rate();
            Money amount = line.fact().amount();
            if (amount.currency().equals(book.home()) || rate != null) {
                Money home = rate == null ? amount : amount.in(book.home(), rate);
                planned.merge(new Key(line.fact().event(), line.fact().car()), home, Money::plus);
            }
        }
        for (Piece piece : book.pieces()) {
            if (season.has(piece.day()) && !piece.place().valued() && piece.place() != Place.KEPT) {
                spent.merge(new Key(piece.event(), piece.car()), piece.amount(), Money::plus);
            }
        }
        List<Key> keys = new ArrayList<>(planned.keySet());
        spent.keySet().stream().filter(key -> !planned.containsKey(key)).forEach(keys::add);
        return keys.stream()
                .map(this::row)
                .sorted(Comparator.comparing((BudgetRow row) -> row.event() == null)
                        .thenComparing(row -> row.event() == null
                                ? ""
                                : row.event().fact().firstDay().toString())
                        .thenComparing(
                                row -> row.car() == null ? "" : row.car().fact().name()))
                .toList();
    }

    private BudgetRow row(Key key) {
        Money none = Money.none(book.home());
        return new BudgetRow(
                Optional.ofNullable(key.event())
                        .flatMap(id -> facts.of(Event.class).find(id))
                        .orElse(null),
                Optional.ofNullable(key.car())
                        .flatMap(id -> facts.of(Car.class).find(id))
                        .orElse(null),
                planned.getOrDefault(key, none),
                spent.getOrDefault(key, none));
    }

    private record Key(@Nullable Id<Event> event, @Nullable Id<Car> car) {}
}
