package witnessmark.launch.seasonsheet;

import static witnessmark.launch.seasonsheet.SeasonInk.line;

import java.util.ArrayList;
import java.util.List;
import witnessmark.cost.result.ToSettle;
import witnessmark.cost.result.Unsettled;
import witnessmark.quantity.Money;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;
import witnessmark.wording.SettleWords;

/** Words what money is not settled yet: row by row as on the screen, then what each thing to do comes to. */
final class SettleSection {
    private static final int COLUMNS = 5;

    private final SeasonInk ink;
    private final Unsettled all;
    private final SettleWords words;

    SettleSection(SeasonInk ink, Unsettled all) {
        this.ink = ink;
        this.all = all;
        this.words = new SettleWords(ink.texts(), ink.measures());
    }

    Section settle() {
        List<Row> rows = new ArrayList<>();
        for (ToSettle row : all.rows()) {
            rows.add(line(
                    words.until(row),
                    words.what(row),
                    words.cost(row),
                    words.where(ink.facts(), row.line().fact()),
                    words.amount(row)));
        }
        all.sums().forEach((what, sum) -> rows.add(sum(Weight.SUM, ink.records().label(words.sum(what)), sum)));
        if (!all.sums().isEmpty()) {
            rows.add(sum(Weight.TOTAL, ink.say("together"), all.total()));
        }
        return new Section(
                ink.texts().get("season.settle"),
                List.of(
                        Column.mark(title("by")),
                        Column.name(title("settle"), 4),
                        Column.words(title("cost"), 4),
                        Column.words(title("where"), 5),
                        Column.figure(title("amount"))),
                rows,
                words.notes(all));
    }

    private Row sum(Weight weight, String name, Money amount) {
        return SeasonInk.sum(weight, COLUMNS, 1, name, ink.amount(amount));
    }

    private String title(String key) {
        return ink.texts().get("season.column." + key);
    }
}
