package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** A sheet for something new. */
record NewSheet(WriteSheet writing, LogSheet sheet, Function<LocalDate, String> dates) implements TypedSheet {
    @Override
    public SheetSight sight() {
        return writing.sight();
    }

    @Override
    public Map<SheetField, String> texts() {
        return ShownDays.in(sheet.fresh(sight()), dates, sight());
    }

    @Override
    public SheetReading read(Map<SheetField, String> typed) {
        return writing.read(sheet, typed);
    }

    @Override
    public Optional<SheetReading> glance(Map<SheetField, String> typed) {
        return writing.glance(sheet, typed);
    }

    @Override
    public List<FoundProblem> check(SheetReading reading) {
        return writing.check(reading);
    }

    @Override
    public Outcome<Optional<Written>> save(Map<SheetField, String> typed, String why) {
        return writing.save(sheet, typed, why).map(Optional::of);
    }
}
