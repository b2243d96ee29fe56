package witnessmark.launch.seasonsheet;

import static witnessmark.launch.seasonsheet.SeasonInk.line;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.LostLife;
import witnessmark.domain.Part;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;

/** Words prices of parts, split by the life they had run. They are counted already: no sum stands under them. */
final class LifeSection {
    private final SeasonInk ink;
    private final SeasonSheetFacts sheet;

    LifeSection(SeasonInk ink, SeasonSheetFacts sheet) {
        this.ink = ink;
        this.sheet = sheet;
    }

    Section life() {
        List<Row> rows = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (Failure failure : sheet.page().failures()) {
            for (LostLife lost : sheet.lost().getOrDefault(failure.incident().id(), List.of())) {
                String part = ink.facts().of(Part.class).get(lost.part()).mark();
                rows.add(line(
                        part,
                        ink.season().mark(failure.incident().fact()),
                        ink.amount(lost.price()),
                        hours(lost.ran()),
                        hours(lost.limit()),
                        amount(lost.used()),
                        amount(lost.lost())));
                if (lost.ran() == null) {
                    missing.add(ink.say("life.noRan", part));
                }
                if (lost.limit() == null) {
                    missing.add(ink.say("life.noLimit", part));
                }
            }
        }
        List<String> notes = new ArrayList<>();
        if (!rows.isEmpty()) {
            notes.add(ink.say("life.note"));
        }
        if (!missing.isEmpty()) {
            notes.add(ink.say("life.missing", ink.measures().row(missing)));
        }
        return new Section(
                ink.say("life"),
                List.of(
                        Column.name(ink.say("life.part"), 3),
                        Column.words(ink.texts().get("season.column.failure"), 3),
                        Column.figure(ink.say("life.price")),
                        Column.figure(ink.say("life.ran")),
                        Column.figure(ink.say("life.limit")),
                        Column.figure(ink.say("life.used")),
                        Column.figure(ink.say("life.lost"))),
                rows,
                notes);
    }

    private String amount(@Nullable Money money) {
        return money == null ? ink.say("life.unknown") : ink.amount(money);
    }

    private String hours(@Nullable RunningTime time) {
        return time == null ? ink.say("life.unknown") : ink.measures().hours(time);
    }
}
