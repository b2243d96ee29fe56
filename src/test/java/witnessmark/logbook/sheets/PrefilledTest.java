package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Position;
import witnessmark.logbook.View;
import witnessmark.logbook.shelf.SeeShelf;
import witnessmark.logbook.shelf.ShelfPart;
import witnessmark.logbook.shelf.SmallShelf;
import witnessmark.logbook.shelf.StockRow;
import witnessmark.quantity.typed.DayOrder;

/** What stands on a sheet that is about a part is what the sheet itself would offer for it. */
class PrefilledTest {
    private static final Map<String, LogSheet> SHEETS = Stream.of(
                    new FitPart(),
                    new TakeOffPart(),
                    new PutPartAside(),
                    new DecideAside(),
                    new SendOut(),
                    new CameBack(),
                    new ChaseOut(),
                    new ScrapPart(),
                    new SplitSet(),
                    new MoveStock())
            .collect(Collectors.toMap(LogSheet::key, Function.identity()));

    private final View view = SmallShelf.view(SmallShelf.DAY);
    private final SheetSight sight =
            new SheetSight(view, SmallShelf.DAY, SheetUnits.metric(DayOrder.DAY_FIRST), "Ada", new StandingNow(view));

    @Test
    void for_every_part_wherever_it_is_each_sheet_offers_what_stands_on_it() {
        for (ShelfPart part : SeeShelf.of(view).parts()) {
            for (Prefilled about : Prefilled.about(part.where(), part.whole())) {
                offers(part.mark(), about);
            }
        }
        for (StockRow row : SeeShelf.of(view).stock()) {
            offers(
                    row.level().batch().fact().batch(),
                    Prefilled.about(row.level().batch().id()));
        }
    }

    @Test
    void a_part_that_is_to_be_fitted_is_offered_the_positions_that_take_it() {
        ShelfPart spare = SeeShelf.of(view).parts().stream()
                .filter(part -> part.mark().equals("VS-15"))
                .findFirst()
                .orElseThrow();
        Map<SheetField, String> texts = new java.util.HashMap<>(
                Prefilled.about(spare.where(), spare.whole()).get(0).texts());
        FitPart sheet = new FitPart();
        texts.put(
                FitPart.PLACE,
                sheet.choices(FitPart.PLACE, new SheetTyped(texts), sight)
                        .get(0)
                        .key());
        List<String> positions = sheet.choices(FitPart.POSITION, new SheetTyped(texts), sight).stream()
                .map(choice -> sight.find(Position.class, choice.key())
                        .orElseThrow()
                        .fact()
                        .name())
                .toList();
        assertThat(positions).containsExactly("inlet springs", "exhaust springs");
    }

    private void offers(String mark, Prefilled about) {
        LogSheet sheet = SHEETS.get(about.sheet());
        about.texts()
                .forEach((field, text) -> assertThat(sheet.choices(field, new SheetTyped(about.texts()), sight))
                        .as(mark + " on " + about.sheet())
                        .extracting(Choice::key)
                        .contains(text));
    }
}
