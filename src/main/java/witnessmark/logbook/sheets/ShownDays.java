package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import witnessmark.quantity.typed.TypedDate;

/** Days as people read them, where they read back to the same day. */
final class ShownDays {
    private ShownDays() {}

    /** @param dates a day as people read it */
    static Map<SheetField, String> in(
            Map<SheetField, String> texts, Function<LocalDate, String> dates, SheetSight sight) {
        Map<SheetField, String> shown = new HashMap<>(texts);
        shown.replaceAll((field, text) ->
                field.kind() == FieldKind.DAY && !text.isEmpty() ? day(LocalDate.parse(text), dates, sight) : text);
        return shown;
    }

    private static String day(LocalDate day, Function<LocalDate, String> dates, SheetSight sight) {
        String words = dates.apply(day);
        boolean same = TypedDate.read(words, sight.today(), sight.days())
                .only()
                .filter(day::equals)
                .isPresent();
        return same ? words : day.toString();
    }
}
