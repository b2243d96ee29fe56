package witnessmark.desktop.form;

import java.util.List;
import java.util.stream.Collectors;
import javax.swing.table.AbstractTableModel;
import witnessmark.desktop.task.EventThread;

/** Immutable rows under declared columns, as {@code JTable} wants them. Every cell holds the whole row. */
final class SheetRows<R> extends AbstractTableModel {
    private final List<Column<R>> columns;
    private List<R> rows = List.of();

    SheetRows(List<Column<R>> columns) {
        this.columns = List.copyOf(columns);
    }

    void show(List<? extends R> next) {
        EventThread.require();
        rows = List.copyOf(next);
        fireTableDataChanged();
    }

    R row(int index) {
        return rows.get(index);
    }

    List<R> rows() {
        return rows;
    }

    /** Everything a row says, for filtering. */
    String words(int index) {
        R row = rows.get(index);
        return columns.stream().map(column -> column.textOf(row)).collect(Collectors.joining(" "));
    }

    Column<R> column(int index) {
        return columns.get(index);
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return columns.size();
    }

    @Override
    public String getColumnName(int index) {
        return columns.get(index).title();
    }

    @Override
    public Object getValueAt(int row, int column) {
        return rows.get(row);
    }
}
