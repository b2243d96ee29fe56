package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.KindCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Switches;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Car;
import witnessmark.domain.CostLine;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncomeLine;
import witnessmark.logbook.money.BudgetRow;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.PieceWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.SeasonWords;
import witnessmark.wording.Texts;

/** Words the lines behind figures. The amounts of the lines behind a figure are together that figure. */
final class CostRows {
    private final Texts texts;
    private final Measures measures;
    private final MoneyWords money;
    private final RecordWords records;
    private final SeasonWords season;
    private final PieceWords pieces;
    private final Facts facts;
    private final SeasonSpan span;
    private final Map<Id<Incident>, IncidentCost> costs = new HashMap<>();

    CostRows(Texts texts, Measures measures, Facts facts, SeasonPage page) {
        this.texts = texts;
        this.measures = measures;
        this.money = new MoneyWords(texts, measures);
        this.records = new RecordWords(texts);
        this.season = new SeasonWords(texts, measures);
        this.pieces = new PieceWords(texts, measures, facts);
        this.facts = facts;
        this.span = page.cost().season();
        page.failures().forEach(failure -> costs.put(failure.incident().id(), failure.cost()));
    }

    /** The lines of a failure that the total takes in. */
    List<CostRow> of(IncidentCost cost, Switches switches) {
        return cost.pieces().stream()
                .filter(switches::takes)
                .map(this::of)
                .sorted(Comparator.comparing(CostRow::at))
                .toList();
    }

    /** The lines of a bar: those of each incident that is wholly in it, and one line for a share of another. */
    List<CostRow> of(Bar bar, Switches switches) {
        List<CostRow> rows = new ArrayList<>();
        for (Bar.Part part : bar.parts()) {
            IncidentCost cost = costs.get(part.incident());
            if (part.amount().equals(part.whole()) && cost != null) {
                rows.addAll(of(cost, switches));
            } else {
                rows.add(share(part));
            }
        }
        return rows;
    }

    /** What a failure cost besides the parts that are named, or a line for a share of that. */
    List<CostRow> of(KindCost.Rest rest) {
        return rest.all()
                ? rest.pieces().stream().map(this::of).toList()
                : List.of(share(new Bar.Part(rest.incident(), rest.whole(), rest.amount())));
    }

    /** What came in. */
    CostRow of(Id<IncomeLine> id, IncomeLine line) {
        return new CostRow(
                id.text(),
                measures.date(line.day()),
                line.day(),
                "",
                line.what(),
                event(line.event()),
                car(line.car()),
                records.label(records.word(line.kind())),
                "",
                line.from(),
                Amount.NONE,
                Amount.NONE,
                Amount.NONE,
                new Amount(measures.money(line.amount()), line.amount().minor()));
    }

    /** What stands in a column of a failure. */
    Amount column(Place place, IncidentCost cost, Switches switches) {
        return new Amount(
                money.in(place, cost, switches), cost.column(place, switches).minor());
    }

    /** What a failure cost together. */
    Amount together(IncidentCost cost, Switches switches) {
        return new Amount(money.together(cost, switches), cost.total(switches).minor());
    }

    /** The same with its currency. */
    String whole(IncidentCost cost, Switches switches) {
        return money.whole(cost, switches);
    }

    Amount amount(Money amount) {
        return new Amount(measures.amount(amount), amount.minor());
    }

    /** {@code INC-05 Big end no. 3 again}. */
    String name(Id<Incident> id) {
        return season.name(facts.of(Incident.class).get(id));
    }

    /** {@code INC-05}, or what it was where it has no mark. */
    String mark(Id<Incident> id) {
        return season.mark(facts.of(Incident.class).get(id));
    }

    /** What a line of the budget plans. */
    CostRow of(BudgetRow.Planned planned) {
        BudgetLine line = planned.line().fact();
        return new CostRow(
                planned.line().id().text(),
                season.day(span, line.day()),
                line.day(),
                "",
                line.note(),
                event(line.event()),
                car(line.car()),
                records.label(records.word(line.category())),
                texts.get("season.column.planned"),
                "",
                Amount.NONE,
                Amount.NONE,
                Amount.NONE,
                amount(planned.amount()));
    }

    /** A piece of a cost. */
    CostRow of(Piece piece) {
        CostLine line = pieces.line(piece);
        List<String> said = new ArrayList<>(List.of(line.what()));
        said.addAll(pieces.said(piece));
        return new CostRow(
                piece.line().text(),
                season.day(span, piece.day()),
                piece.day(),
                piece.incident() == null ? "" : mark(piece.incident()),
                measures.row(said),
                event(piece.event()),
                car(piece.car()),
                records.label(records.word(line.category())),
                money.column(piece.place()),
                season.whom(line),
                amount(pieces.paid(piece)),
                some(pieces.back(piece)),
                some(pieces.kept(piece)),
                amount(piece.amount()));
    }

    private String event(@Nullable Id<Event> id) {
        return id == null ? "" : facts.of(Event.class).get(id).name();
    }

    private String car(@Nullable Id<Car> id) {
        return id == null ? "" : facts.of(Car.class).get(id).name();
    }

    /** The amount; nothing where it is none, as on paper. */
    private Amount some(Money amount) {
        return amount.isNone() ? Amount.NONE : amount(amount);
    }

    private CostRow share(Bar.Part part) {
        Incident incident = facts.of(Incident.class).get(part.incident());
        return new CostRow(
                part.incident().text(),
                season.day(span, incident.at().day()),
                incident.at().day(),
                mark(part.incident()),
                incident.title(),
                event(incident.event()),
                car(incident.car()),
                "",
                texts.get("season.line.share", measures.amount(part.whole())),
                "",
                Amount.NONE,
                Amount.NONE,
                Amount.NONE,
                amount(part.amount()));
    }
}
