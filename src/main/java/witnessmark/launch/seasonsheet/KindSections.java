package witnessmark.launch.seasonsheet;

import static witnessmark.launch.seasonsheet.SeasonInk.line;
import static witnessmark.launch.seasonsheet.SeasonInk.total;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import witnessmark.cost.result.KindCost;
import witnessmark.cost.result.Piece;
import witnessmark.domain.Incident;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;

/** Words what went on each kind of part, failed or not, and the lines behind it. */
final class KindSections {
    private final SeasonInk ink;
    private final SeasonPage page;
    private final Money none;

    KindSections(SeasonInk ink, SeasonPage page) {
        this.ink = ink;
        this.page = page;
        this.none = Money.none(page.total().currency());
    }

    /** Nothing where no kind is named: then all of it stands elsewhere already. */
    Section kinds() {
        List<Row> rows = new ArrayList<>();
        if (page.kinds().stream().anyMatch(kind -> kind.kind() != null)) {
            page.kinds()
                    .forEach(kind -> rows.add(line(
                            name(kind),
                            ink.amount(kind.sumDue()),
                            ink.amount(kind.sumBought()),
                            ink.amount(kind.sumRest()),
                            ink.amount(kind.together()))));
            rows.add(total(
                    ink.say("together"),
                    sum(KindCost::sumDue),
                    sum(KindCost::sumBought),
                    sum(KindCost::sumRest),
                    sum(KindCost::together)));
        }
        return new Section(
                ink.texts().get("season.kinds"),
                List.of(
                        Column.name(ink.money().kinds(), 4),
                        Column.figure(ink.money().kindDue()),
                        Column.figure(ink.money().kindBought()),
                        Column.figure(ink.money().kindRest()),
                        Column.figure(ink.texts().get("money.column.total"))),
                rows,
                rows.isEmpty() ? List.of() : List.of(ink.texts().get("season.kinds.note")));
    }

    /** The lines of each kind that is named; they stand in other tables too. */
    Section behind(LineRows lines) {
        List<Row> rows = new ArrayList<>();
        List<Column> columns = lines.columns(true);
        Money all = none;
        for (KindCost kind : page.kinds()) {
            if (kind.kind() != null) {
                List<Piece> named = Stream.concat(kind.due().stream(), kind.bought().stream())
                        .toList();
                lines.sorted(named).forEach(piece -> rows.add(lines.row(piece, true, true)));
                kind.rest().forEach(rest -> rows.add(rest(rest, columns.size())));
                rows.add(SeasonInk.sum(
                        Weight.SUM, columns.size(), LineRows.WHAT, name(kind), ink.amount(kind.together())));
                all = all.plus(kind.together());
            }
        }
        if (!rows.isEmpty()) {
            rows.add(SeasonInk.sum(Weight.TOTAL, columns.size(), LineRows.WHAT, ink.say("together"), ink.amount(all)));
        }
        return new Section(ink.say("lines.h"), columns, rows, List.of());
    }

    private Row rest(KindCost.Rest rest, int columns) {
        Incident incident = ink.facts().of(Incident.class).get(rest.incident());
        List<Cell> cells = new ArrayList<>(java.util.Collections.nCopies(columns, Cell.of()));
        cells.set(1, Cell.of(ink.day(incident.at().day())));
        cells.set(
                LineRows.WHAT,
                Cell.of(
                        ink.season().name(incident),
                        rest.all()
                                ? ink.texts().get("season.kinds.rest")
                                : ink.texts().get("season.line.share", ink.amount(rest.whole()))));
        cells.set(columns - 1, Cell.of(ink.amount(rest.amount())));
        return new Row(Weight.LINE, cells);
    }

    private String name(KindCost kind) {
        return ink.records().label(ink.money().kind(kind));
    }

    private String sum(Function<KindCost, Money> of) {
        return ink.amount(page.kinds().stream().map(of).reduce(none, Money::plus));
    }
}
