package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.typed.DayOrder;

/** What is picked at first for an engine of the sample is that engine, by the name the sheet has for the history. */
class PicksForAnEngineTest {
    private final Desk desk = SampleBook.on(SampleBook.OPENING);
    private final WriteSheet sheets = new WriteSheet(desk, SampleBook.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));

    static Stream<LogSheet> sheetsThatAskForAnEngine() {
        return Stream.of(
                new FitPart(),
                new TakeOffPart(),
                new WriteReading(),
                new WriteBuild(),
                new WriteHold(),
                new PlanJob(),
                new AcceptAsIs(),
                new SendOut(),
                new PutEngine(),
                new PutSeal(),
                new TakeEngineOut(),
                new TightenJoint(),
                new RepairAtTrack());
    }

    private Id<Engine> engine(String number) {
        return desk.view().facts().of(Engine.class).named(number).orElseThrow().id();
    }

    private List<String> named(LogSheet sheet, String engine) {
        TypedSheet typed = sheets.fresh(sheet, LocalDate::toString);
        Map<SheetField, String> texts = new HashMap<>(typed.texts());
        texts.putAll(typed.picksFor(engine(engine)));
        return sheet.about(new SheetTyped(texts), typed.sight());
    }

    @ParameterizedTest
    @MethodSource("sheetsThatAskForAnEngine")
    void it_is_that_engine(LogSheet sheet) {
        assertThat(sheets.fresh(sheet, LocalDate::toString).picksFor(engine("K03")))
                .hasSize(1);
        if (!(sheet instanceof TakeOffPart || sheet instanceof PlanJob)) {
            assertThat(named(sheet, "K03")).anyMatch(name -> name.contains("K03"));
        }
    }

    /** HD-03 is the head on K03; K05 is open for its build 3. */
    @Test
    void of_work_it_is_the_head_and_of_a_build_the_one_that_is_open() {
        assertThat(named(new WriteWork(), "K03")).containsExactly("HD-03");
        assertThat(named(new CloseBuild(), "K05")).contains("K05");
        assertThat(sheets.fresh(new CloseBuild(), LocalDate::toString).picksFor(engine("K03")))
                .isEmpty();
        assertThat(sheets.fresh(new TakeEngineOut(), LocalDate::toString).picksFor(engine("K05")))
                .as("K05 is in no car")
                .isEmpty();
    }
}
