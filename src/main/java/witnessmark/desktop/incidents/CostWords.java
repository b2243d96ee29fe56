package witnessmark.desktop.incidents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.CostLine;
import witnessmark.domain.Facts;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** What an incident cost: its four columns and their total, each with its lines. */
final class CostWords {
    private static final List<Place> COLUMNS = Switches.ALL.columns();

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final MoneyWords money;

    CostWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.money = new MoneyWords(texts, measures);
    }

    /** The total last; what is apart from it is in no line of it. */
    List<PageLines.Amounts> columns(Facts facts, IncidentCost cost) {
        List<PageLines.Amounts> columns = new ArrayList<>();
        for (Place column : COLUMNS) {
            columns.add(new PageLines.Amounts(
                    money.column(column),
                    money.in(column, cost, Switches.USUAL),
                    pieces(
                            facts,
                            cost.pieces().stream()
                                    .filter(piece -> piece.place() == column)
                                    .toList())));
        }
        columns.add(new PageLines.Amounts(
                texts.get("money.column.total"),
                money.together(cost, Switches.USUAL),
                pieces(
                        facts,
                        cost.pieces().stream().filter(Switches.USUAL::takes).toList())));
        return columns;
    }

    private List<PageLines.PieceLine> pieces(Facts facts, List<Piece> all) {
        List<PageLines.PieceLine> lines = new ArrayList<>();
        all.stream().sorted(Comparator.comparing(Piece::day)).forEach(piece -> {
            CostLine line = facts.of(CostLine.class).get(piece.line());
            lines.add(new PageLines.PieceLine(
                    piece.line().text() + " " + lines.size(),
                    piece.line().text(),
                    measures.shortDate(piece.day()),
                    piece.day(),
                    money.column(piece.place()),
                    records.label(records.word(line.category())),
                    what(line, piece),
                    measures.money(piece.amount()),
                    piece.amount().minor()));
        });
        return lines;
    }

    private String what(CostLine line, Piece piece) {
        List<String> all = new ArrayList<>(List.of(line.what()));
        if (piece.planned()) {
            all.add(texts.get("incidents.due_anyway"));
        }
        if (piece.allocated()) {
            all.add(texts.get("incidents.either_way"));
        }
        return measures.row(all);
    }

    /** What nothing is written of, what the total can be, and what it rests on. */
    List<String> span(IncidentCost cost) {
        if (cost.isUnwritten()) {
            return List.of(texts.get("incidents.no_cost"));
        }
        List<String> said = new ArrayList<>();
        COLUMNS.stream()
                .filter(cost.unwritten()::contains)
                .forEach(column -> said.add(
                        texts.get("incidents.unwritten." + column.name().toLowerCase(Locale.ROOT))));
        if (cost.hasTotal(Switches.USUAL)) {
            said.add(records.label(money.span(cost.span(Switches.USUAL))));
        }
        said.add(money.restsOn(Switches.USUAL));
        return said;
    }
}
