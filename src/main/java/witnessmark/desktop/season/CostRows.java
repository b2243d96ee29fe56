package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Switches;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.CostLine;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncomeLine;
import witnessmark.logbook.money.BudgetRow;
import witnessmark.logbook.money.Failure;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
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
    private final Facts facts;
    private final Map<Id<Incident>, IncidentCost> costs = new HashMap<>();

    CostRows(Texts texts, Measures measures, Facts facts, List<Failure> failures) {
        this.texts = texts;
        this.measures = measures;
        this.money = new MoneyWords(texts, measures);
        this.records = new RecordWords(texts);
        this.season = new SeasonWords(texts, measures);
        this.facts = facts;
        failures.forEach(failure -> costs.put(failure.incident().id(), failure.cost()));
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

    /** What came in. */
    CostRow of(Id<IncomeLine> id, IncomeLine line) {
        return new CostRow(
                id.text(),
                measures.date(line.day()),
                line.day(),
                "",
                line.what(),
                records.label(records.word(line.kind())),
                "",
                line.from(),
                new Amount(measures.money(line.amount()), line.amount().minor()));
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
                measures.date(line.day()),
                line.day(),
                "",
                line.note(),
                records.label(records.word(line.category())),
                texts.get("season.column.planned"),
                "",
                amount(planned.amount()));
    }

    /** A piece of a cost. */
    CostRow of(Piece piece) {
        CostLine line = facts.of(CostLine.class).get(piece.line());
        List<String> said = new ArrayList<>(List.of(line.what()));
        if (piece.planned()) {
            said.add(texts.get("season.line.planned"));
        }
        if (piece.allocated()) {
            said.add(texts.get("season.line.allocated"));
        }
        return new CostRow(
                piece.line().text(),
                measures.date(piece.day()),
                piece.day(),
                piece.incident() == null ? "" : mark(piece.incident()),
                measures.row(said),
                records.label(records.word(line.category())),
                money.column(piece.place()),
                season.whom(line),
                amount(piece.amount()));
    }

    private CostRow share(Bar.Part part) {
        Incident incident = facts.of(Incident.class).get(part.incident());
        return new CostRow(
                part.incident().text(),
                measures.date(incident.at().day()),
                incident.at().day(),
                mark(part.incident()),
                incident.title(),
                "",
                texts.get("season.line.share", measures.amount(part.whole())),
                "",
                amount(part.amount()));
    }
}
