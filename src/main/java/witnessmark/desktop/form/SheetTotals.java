package witnessmark.desktop.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.MouseWheelEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.jspecify.annotations.Nullable;

/** One row under a list, in the list's own columns: the totals of the rows shown. */
final class SheetTotals<R> extends JScrollPane {
    private final transient SheetRows<R> rows;
    private final transient Supplier<List<R>> shown;
    private final Totals totals = new Totals();

    /** @param above the list's own scroll pane, which this goes along with sideways */
    SheetTotals(String name, SheetRows<R> rows, SheetGrid table, JScrollPane above, Supplier<List<R>> shown) {
        this.rows = rows;
        this.shown = shown;
        JTable row = new Row(table);
        row.setFocusable(false);
        row.setRowSelectionAllowed(false);
        row.getAccessibleContext().setAccessibleName(name);
        setViewportView(row);
        setColumnHeaderView(null);
        setBorder(BorderFactory.createEmptyBorder());
        setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        setVerticalScrollBarPolicy(ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER);
        getHorizontalScrollBar().setModel(above.getHorizontalScrollBar().getModel());
    }

    /** There is nothing to scroll here: the wheel scrolls the page. */
    @Override
    protected void processMouseWheelEvent(MouseWheelEvent e) {
        Container page = getParent();
        if (page != null) {
            page.dispatchEvent(SwingUtilities.convertMouseEvent(this, e, page));
        }
    }

    /** Adds up anew. */
    void update() {
        totals.fireTableRowsUpdated(0, 0);
    }

    /** The totals, in the columns of the list above and as wide as they are. */
    private final class Row extends JTable {
        private final transient Cell cell = new Cell();

        Row(SheetGrid above) {
            super(totals, above.getColumnModel());
            setAutoResizeMode(AUTO_RESIZE_OFF);
        }

        /** The list above has laid the columns out. */
        @Override
        public void doLayout() {}

        @Override
        protected void configureEnclosingScrollPane() {
            // the headings stand above already
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(getColumnModel().getTotalColumnWidth(), getRowHeight());
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return new Dimension(0, getRowHeight());
        }

        @Override
        public TableCellRenderer getCellRenderer(int row, int column) {
            return cell;
        }
    }

    /** One row, told anew each time it is drawn. */
    private final class Totals extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return 1;
        }

        @Override
        public int getColumnCount() {
            return rows.getColumnCount();
        }

        @Override
        public String getColumnName(int column) {
            return rows.getColumnName(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            return rows.column(column).totalOf(shown.get());
        }
    }

    /** Bold, aligned like the column. */
    private final class Cell extends DefaultTableCellRenderer {
        Cell() {
            Lettering.plain(this);
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, @Nullable Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, false, false, row, column);
            boolean figure =
                    rows.column(table.convertColumnIndexToModel(column)).kind() == Column.Kind.FIGURE;
            setHorizontalAlignment(figure ? SwingConstants.TRAILING : SwingConstants.LEADING);
            setFont(table.getFont().deriveFont(Font.BOLD));
            getAccessibleContext().setAccessibleName(getText());
            boolean cut = getPreferredSize().width
                    > table.getColumnModel().getColumn(column).getWidth();
            setToolTipText(cut ? getText() : null);
            return this;
        }
    }
}
