package witnessmark.logbook.sheets;

import java.util.List;

/**
 * Fields that belong together under one heading.
 *
 * @param key of the heading in the bundles
 * @param rows the fields row by row, at most four columns to a row
 */
public record SheetGroup(String key, List<List<SheetField>> rows) {
    public SheetGroup {
        rows = rows.stream().map(List::copyOf).toList();
    }

    @SafeVarargs
    @SuppressWarnings("varargs") // handed on only to be copied
    static SheetGroup of(String key, List<SheetField>... rows) {
        return new SheetGroup(key, List.of(rows));
    }
}
