package witnessmark.logbook.sheets;

import org.jspecify.annotations.Nullable;

/**
 * A field of a sheet.
 *
 * @param key its name within the sheet, in the bundles and in what is typed
 * @param kind what it takes
 * @param span how many of the four columns of a row it takes, 1 to 4
 * @param label what it is called, or null when the bundles name it by its key
 */
public record SheetField(
        String key, FieldKind kind, int span, @Nullable SheetLabel label) {
    public SheetField {
        if (span < 1 || span > 4) {
            throw new IllegalArgumentException("a row has four columns");
        }
    }

    SheetField(String key, FieldKind kind, int span) {
        this(key, kind, span, null);
    }

    static SheetField text(String key, int span) {
        return new SheetField(key, FieldKind.TEXT, span);
    }

    static SheetField choice(String key, int span) {
        return new SheetField(key, FieldKind.CHOICE, span);
    }

    static SheetField of(String key, FieldKind kind) {
        return new SheetField(key, kind, 1);
    }
}
