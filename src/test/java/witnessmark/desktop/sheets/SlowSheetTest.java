package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.FoundProblem;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetReading;
import witnessmark.logbook.sheets.SheetSight;
import witnessmark.logbook.sheets.SheetUnits;
import witnessmark.logbook.sheets.TypedSheet;
import witnessmark.logbook.sheets.WriteSheet;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.typed.DayOrder;

/** A sheet that cannot be read at a glance: it is read elsewhere, and stands as it was until then. */
class SlowSheetTest {
    private static final SheetField NAME = new AddCar().fields().iterator().next();

    private final Desk desk = SampleBook.on(SampleBook.OPENING);
    private final WriteSheet sheets = new WriteSheet(desk, SampleBook.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));
    private final TypedSheet quick = sheets.fresh(new AddCar(), LocalDate::toString);
    private boolean slow;
    private int asked;

    @Test
    void it_waits_for_its_reading_takes_the_one_of_what_is_typed_and_drops_any_other() {
        SheetModel model = new SheetModel(new Slow());
        model.onSlow(() -> asked++);
        model.type(NAME, "9");
        assertThat(model.waits()).isFalse();
        SheetReading before = model.reading();

        slow = true;
        model.type(NAME, "41");
        assertThat(asked).isEqualTo(1);
        assertThat(model.waits()).isTrue();
        assertThat(model.reading()).isSameAs(before);
        Map<SheetField, String> first = model.texts();
        model.type(NAME, "57");
        assertThat(asked).isEqualTo(2);

        model.read(first, quick.read(first));
        assertThat(model.waits()).as("of what was typed before").isTrue();
        SheetReading now = quick.read(model.texts());
        model.read(model.texts(), now);
        assertThat(model.waits()).isFalse();
        assertThat(model.reading()).isSameAs(now);
    }

    /** Quick until it is said to be slow. */
    private final class Slow implements TypedSheet {
        @Override
        public LogSheet sheet() {
            return quick.sheet();
        }

        @Override
        public SheetSight sight() {
            return quick.sight();
        }

        @Override
        public Map<SheetField, String> texts() {
            return quick.texts();
        }

        @Override
        public SheetReading read(Map<SheetField, String> typed) {
            return quick.read(typed);
        }

        @Override
        public Optional<SheetReading> glance(Map<SheetField, String> typed) {
            return slow ? Optional.empty() : quick.glance(typed);
        }

        @Override
        public List<FoundProblem> check(SheetReading reading) {
            return quick.check(reading);
        }

        @Override
        public Outcome<Optional<Written>> save(Map<SheetField, String> typed, String why) {
            return quick.save(typed, why);
        }
    }
}
