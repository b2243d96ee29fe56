package witnessmark.desktop.engines;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedDate;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Reads the earlier day somebody types. */
final class AsOfModel {
    private final Texts texts;
    private final Measures measures;
    private final DayOrder order;

    /** @param order what stands first in a date of figures */
    AsOfModel(Texts texts, Measures measures, DayOrder order) {
        this.texts = texts;
        this.measures = measures;
        this.order = order;
    }

    /**
     * What became of the text.
     *
     * @param day the day, or null when it is none that can be looked at
     * @param words what was understood, or what to do
     */
    record Read(@Nullable LocalDate day, String words) {}

    String hint() {
        return texts.get("engines.asOf.hint");
    }

    Read read(String text, LocalDate today) {
        if (text.isBlank()) {
            return new Read(null, texts.get("engines.asOf.needed"));
        }
        Typed<LocalDate> typed = TypedDate.read(text, today, order);
        if (typed instanceof Typed.Two<LocalDate> two) {
            return new Read(
                    null, texts.get("engines.asOf.two", measures.date(two.first()), measures.date(two.second())));
        }
        return typed.only()
                .map(day -> earlier(day, today))
                .orElseGet(() -> new Read(null, texts.get("engines.asOf.unreadable", text.strip())));
    }

    private Read earlier(LocalDate day, LocalDate today) {
        return day.isBefore(today)
                ? new Read(day, texts.get("engines.asOf.understood", measures.date(day)))
                : new Read(null, texts.get("engines.asOf.notEarlier", measures.date(day), measures.date(today)));
    }
}
