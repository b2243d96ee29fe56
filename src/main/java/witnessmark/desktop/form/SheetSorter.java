package witnessmark.desktop.form;

import java.util.Comparator;
import java.util.List;
import javax.swing.RowSorter;
import javax.swing.SortOrder;
import javax.swing.table.TableRowSorter;

/** Sorting by heading: up, down, then back to the natural order. Blanks come last both ways. */
final class SheetSorter<R> extends TableRowSorter<SheetRows<R>> {
    SheetSorter(SheetRows<R> rows) {
        super(rows);
        for (int i = 0; i < rows.getColumnCount(); i++) {
            setComparator(i, blanksLast(i, rows.column(i)));
        }
        setMaxSortKeys(1);
    }

    @Override
    public void toggleSortOrder(int column) {
        List<? extends RowSorter.SortKey> keys = getSortKeys();
        boolean wasDown = !keys.isEmpty()
                && keys.get(0).getColumn() == column
                && keys.get(0).getSortOrder() == SortOrder.DESCENDING;
        if (wasDown) {
            setSortKeys(List.of());
        } else {
            super.toggleSortOrder(column);
        }
    }

    private Comparator<R> blanksLast(int index, Column<R> column) {
        return (a, b) -> {
            boolean left = column.isBlank(a);
            boolean right = column.isBlank(b);
            if (left || right) {
                int last = isDown(index) ? -1 : 1;
                return left == right ? 0 : left ? last : -last;
            }
            return column.order().compare(a, b);
        };
    }

    private boolean isDown(int column) {
        return getSortKeys().stream()
                .anyMatch(key -> key.getColumn() == column && key.getSortOrder() == SortOrder.DESCENDING);
    }
}
