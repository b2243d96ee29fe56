package witnessmark.logbook.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
    private final Map<Key, List<BudgetRow.Planned>> planned = new LinkedHashMap<>();
    private final Map<Key, List<Piece>> spent = new LinkedHashMap<>();

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
                planned.computeIfAbsent(new Key(line.fact().event(), line.fact().car()), key -> new ArrayList<>())
                        .add(new BudgetRow.Planned(line, home));
            }
        }
        for (Piece piece : book.pieces()) {
            if (season.has(piece.day()) && !piece.place().valued() && piece.place() != Place.KEPT) {
                spent.computeIfAbsent(new Key(piece.event(), piece.car()), key -> new ArrayList<>())
                        .add(piece);
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
        List<BudgetRow.Planned> lines = planned.getOrDefault(key, List.of()).stream()
                .sorted(Comparator.comparing(each -> each.line().fact().day()))
                .toList();
        List<Piece> pieces = spent.getOrDefault(key, List.of()).stream()
                .sorted(Comparator.comparing(Piece::day))
                .toList();
        return new BudgetRow(
                Optional.ofNullable(key.event())
                        .flatMap(id -> facts.of(Event.class).find(id))
                        .orElse(null),
                Optional.ofNullable(key.car())
                        .flatMap(id -> facts.of(Car.class).find(id))
                        .orElse(null),
                sum(lines.stream().map(BudgetRow.Planned::amount)),
                sum(pieces.stream().map(Piece::amount)),
                lines,
                pieces);
    }

    private Money sum(Stream<Money> amounts) {
        return amounts.reduce(Money.none(book.home()), Money::plus);
    }

    private record Key(@Nullable Id<Event> event, @Nullable Id<Car> car) {}
}
