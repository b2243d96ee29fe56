package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import witnessmark.chart.StackedBar;
import witnessmark.chart.StackedBar.Fill;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words and measures the bars: the longest takes the whole scale, and each is cut by where its money is counted. */
final class BarModel {
    private static final Map<Place, Fill> FILLS = Map.of(
            Place.CASH, Fill.SOLID,
            Place.LABOUR, Fill.HATCHED,
            Place.MISSED, Fill.DOTTED,
            Place.SPOILED, Fill.OUTLINED);

    private final Measures measures;
    private final MoneyWords money;
    private final RecordWords records;

    BarModel(Texts texts, Measures measures) {
        this.measures = measures;
        this.money = new MoneyWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    static Fill fill(Place place) {
        return Objects.requireNonNull(FILLS.get(place));
    }

    List<BarLine> lines(SeasonPage page, Facts facts, CostRows rows) {
        Map<Id<Incident>, IncidentCost> costs = page.failures().stream()
                .map(Failure::cost)
                .collect(Collectors.toMap(IncidentCost::incident, cost -> cost));
        long longest = page.bars().stream()
                .mapToLong(bar -> bar.amount().minor())
                .max()
                .orElse(0);
        Money so = Money.none(page.total().currency());
        List<BarLine> lines = new ArrayList<>();
        for (Bar bar : page.bars()) {
            so = so.plus(bar.amount());
            Map<Place, Double> cut = cut(bar, costs, page.switches());
            lines.add(new BarLine(
                    String.valueOf(bar.subject()),
                    name(bar, page.by(), facts, rows),
                    drawn(cut, longest),
                    said(cut, bar),
                    rows.amount(bar.amount()),
                    money.share(bar.amount(), page.total()),
                    money.share(so, page.total()),
                    money.perHour(bar.amount(), bar.running()),
                    rows.of(bar, page.switches())));
        }
        return lines;
    }

    private String name(Bar bar, BarsBy by, Facts facts, CostRows rows) {
        Object subject = bar.subject();
        return by == BarsBy.INCIDENT && subject instanceof Id<?> id
                ? rows.name(new Id<>(id.value()))
                : records.label(money.subject(facts, bar));
    }

    /** How much of a bar is counted where: a share of an incident has the same share of each of its columns. */
    private static Map<Place, Double> cut(Bar bar, Map<Id<Incident>, IncidentCost> costs, Switches switches) {
        Map<Place, Double> cut = new TreeMap<>();
        for (Bar.Part part : bar.parts()) {
            IncidentCost cost = costs.get(part.incident());
            if (cost == null || part.whole().isNone()) {
                continue;
            }
            double share = (double) part.amount().minor() / part.whole().minor();
            for (Place place : FILLS.keySet()) {
                long sum = cost.pieces().stream()
                        .filter(piece -> piece.place() == place && switches.takes(piece))
                        .mapToLong(piece -> piece.amount().minor())
                        .sum();
                cut.merge(place, share * sum, Double::sum);
            }
        }
        return cut;
    }

    private static StackedBar drawn(Map<Place, Double> cut, long longest) {
        List<StackedBar.Piece> pieces = new ArrayList<>();
        double room = 1;
        for (Map.Entry<Place, Double> each : cut.entrySet()) {
            // more was got back than paid: nothing to draw
            double share = longest <= 0 ? 0 : Math.max(0, Math.min(room, each.getValue() / longest));
            room -= share;
            if (share > 0) {
                pieces.add(new StackedBar.Piece(fill(each.getKey()), share));
            }
        }
        return new StackedBar(pieces);
    }

    private String said(Map<Place, Double> cut, Bar bar) {
        List<String> said = new ArrayList<>();
        cut.forEach((place, sum) -> {
            if (Math.round(sum) != 0) {
                Money part = new Money(Math.round(sum), bar.amount().currency());
                said.add(money.columnOf(place, part));
            }
        });
        return measures.row(said);
    }
}
