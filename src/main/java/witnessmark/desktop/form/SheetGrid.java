package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.TableColumn;
import javax.swing.table.TableModel;
import org.jspecify.annotations.Nullable;

/**
 * The table in a {@link SheetTable}. Columns that grow share what is left over by the others; where not even their least
 * is left over, it scrolls sideways. A cell that is cut says all of itself in its tooltip.
 */
final class SheetGrid extends JTable {
    private static final double LEAST_OF_GROWING = 0.4;
    private static final int ROWS = 5;

    private final transient Predicate<TableColumn> grows;
    private boolean allRows;

    SheetGrid(TableModel rows, Predicate<TableColumn> grows) {
        super(rows);
        this.grows = grows;
    }

    @Override
    public void doLayout() {
        TableColumn dragged = getTableHeader() == null ? null : getTableHeader().getResizingColumn();
        if (dragged != null) {
            dragged.setPreferredWidth(dragged.getWidth());
        }
        int over = getWidth();
        int shares = 0;
        int growing = 0;
        for (TableColumn column : columns()) {
            boolean one = grows.test(column);
            over -= one ? 0 : column.getPreferredWidth();
            shares += one ? column.getPreferredWidth() : 0;
            growing += one ? 1 : 0;
        }
        for (TableColumn column : columns()) {
            if (grows.test(column)) {
                growing--;
                int share = growing == 0 ? over : (int) ((long) over * column.getPreferredWidth() / shares);
                shares -= column.getPreferredWidth();
                int width = Math.max(least(column), share);
                over -= width;
                column.setWidth(width);
            } else {
                column.setWidth(column.getPreferredWidth());
            }
        }
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        Container parent = getParent();
        return parent != null && parent.getWidth() >= leastWidth();
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        return getScrollableTracksViewportWidth() ? size : new Dimension(leastWidth(), size.height);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        boolean sure = allRows && getScrollableTracksViewportWidth();
        int sideways = sure ? 0 : UIManager.getInt("ScrollBar.width");
        return new Dimension(leastWidth(), rowsShown() * getRowHeight() + UIScale.scale(sideways));
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        int row = rowAtPoint(e.getPoint());
        int column = columnAtPoint(e.getPoint());
        if (row >= 0 && column >= 0) {
            Component cell = prepareRenderer(getCellRenderer(row, column), row, column);
            if (cell.getPreferredSize().width
                    > getColumnModel().getColumn(column).getWidth()) {
                return cell.getAccessibleContext().getAccessibleName();
            }
        }
        return super.getToolTipText(e);
    }

    /** From now on it asks for the height of all its rows. */
    void showAllRows() {
        allRows = true;
    }

    private int rowsShown() {
        return allRows ? Math.max(1, getRowCount()) : ROWS;
    }

    private int leastWidth() {
        return columns().stream()
                .mapToInt(column -> grows.test(column) ? least(column) : column.getPreferredWidth())
                .sum();
    }

    private static int least(TableColumn column) {
        return Math.max(column.getMinWidth(), (int) (LEAST_OF_GROWING * column.getPreferredWidth()));
    }

    private List<TableColumn> columns() {
        return new ArrayList<>(Collections.list(getColumnModel().getColumns()));
    }
}
