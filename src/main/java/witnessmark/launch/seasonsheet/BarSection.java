package witnessmark.launch.seasonsheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.domain.Id;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;

/** Words what failures went on, put together one way: a figure with its bar, its share and what it is with those above. */
final class BarSection {
    private final SeasonInk ink;
    private final SeasonSheetFacts sheet;
    private final Money whole;

    BarSection(SeasonInk ink, SeasonSheetFacts sheet) {
        this.ink = ink;
        this.sheet = sheet;
        this.whole = sheet.page().total();
    }

    Section by(BarsBy by) {
        List<Bar> bars = sheet.bars().getOrDefault(by, List.of());
        boolean runs = bars.stream().anyMatch(BarSection::runs);
        long longest =
                bars.stream().mapToLong(bar -> bar.amount().minor()).max().orElse(0);
        List<Row> rows = new ArrayList<>();
        Money so = Money.none(whole.currency());
        for (Bar bar : bars) {
            so = so.plus(bar.amount());
            List<Cell> cells = new ArrayList<>(List.of(
                    Cell.of(name(by, bar)),
                    Cell.bar(longest <= 0 ? 0 : (double) bar.amount().minor() / longest),
                    Cell.of(ink.amount(bar.amount())),
                    Cell.of(ink.money().share(bar.amount(), whole)),
                    Cell.of(ink.money().share(so, whole))));
            if (runs) {
                cells.add(Cell.of(perHour(bar)));
            }
            rows.add(new Row(Weight.LINE, cells));
        }
        if (!rows.isEmpty()) {
            List<Cell> sum = new ArrayList<>(
                    List.of(Cell.of(ink.say("together")), Cell.of(), Cell.of(ink.amount(so)), Cell.of(), Cell.of()));
            if (runs) {
                sum.add(Cell.of());
            }
            rows.add(new Row(Weight.TOTAL, sum));
        }
        return new Section(ink.say("bars", ink.money().by(by)), columns(runs), rows, notes(by, rows));
    }

    private List<Column> columns(boolean runs) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.name(ink.texts().get("season.column.bar"), 6),
                Column.bar("", 5),
                Column.figure(ink.texts().get("season.column.amount")),
                Column.figure(ink.texts().get("season.column.share")),
                Column.figure(ink.texts().get("season.column.running"))));
        if (runs) {
            columns.add(Column.figure(ink.texts().get("season.column.perHour")));
        }
        return columns;
    }

    private List<String> notes(BarsBy by, List<Row> rows) {
        boolean shared = by == BarsBy.CAUSE_AREA || by == BarsBy.PART_KIND;
        return shared && !rows.isEmpty()
                ? List.of(ink.say("bars.note." + (by == BarsBy.CAUSE_AREA ? "cause" : "part")))
                : List.of();
    }

    private static boolean runs(Bar bar) {
        return bar.running() != null && bar.running().millis() > 0;
    }

    /** Empty where it has run nothing, or nothing of it runs. */
    private String perHour(Bar bar) {
        @Nullable RunningTime running = bar.running();
        return running == null || running.millis() == 0 ? "" : ink.money().perHour(bar.amount(), running);
    }

    private String name(BarsBy by, Bar bar) {
        return by == BarsBy.INCIDENT && bar.subject() instanceof Id<?> id
                ? ink.name(new Id<>(id.value()))
                : ink.records().label(ink.money().subject(ink.facts(), bar));
    }
}
