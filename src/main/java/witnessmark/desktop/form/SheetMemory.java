package witnessmark.desktop.form;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import javax.swing.RowSorter.SortKey;
import javax.swing.SortOrder;
import witnessmark.desktop.task.Later;

/**
 * Remembers a list's columns and sort from one start to the next. What it was filtered by is not: rows that a word of
 * yesterday, or of another logbook, leaves out look lost.
 */
final class SheetMemory {
    private static final Duration PAUSE = Duration.ofMillis(300);

    private final SheetTools tools;
    private final String key;
    private final SheetColumns<?> columns;
    private final SheetSorter<?> sorter;
    private final Later soon;

    /** @param list the list's own name among the settings */
    SheetMemory(SheetTools tools, String list, SheetColumns<?> columns, SheetSorter<?> sorter) {
        this.tools = tools;
        this.key = "list." + list;
        this.columns = columns;
        this.sorter = sorter;
        this.soon = tools.tasks().later(PAUSE, this::put);
    }

    /** Puts the list as it was left, and watches it from now on. */
    void start() {
        get("columns").ifPresent(columns::restore);
        get("sort").flatMap(this::sortKey).ifPresent(sort -> sorter.setSortKeys(List.of(sort)));
        columns.onChange(soon::poke);
        sorter.addRowSorterListener(e -> soon.poke());
    }

    private void put() {
        tools.settings().put(key + ".columns", columns.state());
        tools.settings()
                .put(
                        key + ".sort",
                        sorter.getSortKeys().stream()
                                .map(SheetMemory::text)
                                .findFirst()
                                .orElse(""));
    }

    private Optional<String> get(String what) {
        return tools.settings().get(key + "." + what).filter(text -> !text.isBlank());
    }

    private static String text(SortKey sort) {
        return sort.getColumn() + (sort.getSortOrder() == SortOrder.DESCENDING ? "-" : "+");
    }

    private Optional<SortKey> sortKey(String text) {
        if (!text.matches("\\d{1,3}[+-]")) {
            return Optional.empty();
        }
        int column = Integer.parseInt(text.substring(0, text.length() - 1));
        SortOrder order = text.endsWith("-") ? SortOrder.DESCENDING : SortOrder.ASCENDING;
        return column < sorter.getModel().getColumnCount() ? Optional.of(new SortKey(column, order)) : Optional.empty();
    }
}
