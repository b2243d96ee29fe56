package witnessmark.logbook.sheets;

import java.util.HashMap;
import java.util.Map;

/** What stands in the fields of a sheet. A field nobody filled is empty. */
public final class SheetTyped {
    private final Map<SheetField, String> texts;

    public SheetTyped(Map<SheetField, String> texts) {
        this.texts = new HashMap<>(texts);
    }

    /** The text without blanks round it. */
    public String text(SheetField field) {
        return texts.getOrDefault(field, "").strip();
    }

    /** The same with something else in a field. */
    SheetTyped with(SheetField field, String text) {
        SheetTyped other = new SheetTyped(texts);
        other.texts.put(field, text);
        return other;
    }

    boolean is(SheetField field, SheetWord word) {
        return text(field).equals(word.key());
    }
}
