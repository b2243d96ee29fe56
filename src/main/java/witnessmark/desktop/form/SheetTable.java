package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;

/**
 * A list in columns that is read, sorted, filtered and copied, not typed into. Tab leaves it, Enter or a double click
 * opens a row, the selection is kept by record when other rows are shown.
 *
 * @param <R> the row, an immutable view record
 */
public final class SheetTable<R> extends JPanel {
    private static final String ROWS = "rows";
    private static final String EMPTY = "empty";

    private final SheetRows<R> rows;
    private final SheetSorter<R> sorter;
    private final JTable table;
    private final Function<? super R, ?> id;
    private final CardLayout cards = new CardLayout();
    private final List<Consumer<@Nullable R>> onSelect = new ArrayList<>();
    private @Nullable JComponent empty;
    private boolean showing;
    private boolean built;

    /**
     * @param name what the list is, for screen readers
     * @param columns from left to right
     * @param id what makes a row the same record as before
     */
    public SheetTable(String name, List<Column<R>> columns, Function<? super R, ?> id) {
        this.rows = new SheetRows<>(columns);
        this.sorter = new SheetSorter<>(rows);
        this.table = new JTable(rows);
        this.id = id;
        setLayout(cards);
        setOpaque(false);
        table.setRowSorter(sorter);
        table.getAccessibleContext().setAccessibleName(name);
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        table.setFillsViewportHeight(true);
        table.getTableHeader().setReorderingAllowed(true);
        table.putClientProperty("terminateEditOnFocusLost", true);
        Styles.as(Styles.CLOSE, table);
        Traversal.tabLeaves(table);
        layOutColumns();
        bindKeys();
        new SheetCopy<>(this).install();
        table.getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting() && !showing) {
                tellSelection();
            }
        });
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll, ROWS);
        built = true;
    }

    /** Rows 30 high for cold hands and gloves, instead of 24. */
    public SheetTable<R> comfortable() {
        Styles.as(Styles.COMFORTABLE, table);
        return this;
    }

    /** What stands in the list's place while it has no row: what it is for, and the button that makes one. */
    public SheetTable<R> whenEmpty(JComponent shown) {
        JComponent before = empty;
        if (before != null) {
            remove(before);
        }
        empty = shown;
        add(shown, EMPTY);
        showCard();
        return this;
    }

    /** Shows other rows in their natural order; sort, filter and selection stay. */
    public void show(List<? extends R> next) {
        R before = selected();
        Object kept = before == null ? null : id.apply(before);
        showing = true;
        rows.show(next);
        boolean found = kept != null && select(kept);
        showing = false;
        showCard();
        if (kept != null || found) {
            tellSelection();
        }
    }

    /** Shows only rows that pass. */
    public void filter(@Nullable Predicate<? super R> wanted) {
        if (wanted == null) {
            sorter.setRowFilter(null);
            return;
        }
        sorter.setRowFilter(new RowFilter<SheetRows<R>, Integer>() {
            @Override
            public boolean include(Entry<? extends SheetRows<R>, ? extends Integer> entry) {
                return wanted.test(entry.getModel().row(entry.getIdentifier()));
            }
        });
    }

    /** The row in hand, {@code null} for none. */
    public @Nullable R selected() {
        int at = table.getSelectedRow();
        return at < 0 ? null : rows.row(table.convertRowIndexToModel(at));
    }

    /** Selects the row with the id and brings it into view. */
    public boolean select(Object wanted) {
        for (int at = 0; at < table.getRowCount(); at++) {
            if (Objects.equals(id.apply(rows.row(table.convertRowIndexToModel(at))), wanted)) {
                table.setRowSelectionInterval(at, at);
                table.scrollRectToVisible(table.getCellRect(at, 0, true));
                return true;
            }
        }
        return false;
    }

    /** Told the row in hand, or {@code null}, whenever that changes. */
    public void onSelect(Consumer<@Nullable R> listener) {
        onSelect.add(listener);
    }

    /** Told the row on Enter or a double click. */
    public void onOpen(Consumer<? super R> listener) {
        Runnable open = () -> {
            R row = selected();
            if (row != null) {
                listener.accept(row);
            }
        };
        table.getActionMap().put("wm-open", action(open));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2 && e.getButton() == MouseEvent.BUTTON1) {
                    open.run();
                }
            }
        });
    }

    /** The rows as shown, filtered and sorted. */
    public List<R> shown() {
        List<R> all = new ArrayList<>();
        for (int at = 0; at < table.getRowCount(); at++) {
            all.add(rows.row(table.convertRowIndexToModel(at)));
        }
        return all;
    }

    public JTable table() {
        return table;
    }

    SheetRows<R> rows() {
        return rows;
    }

    private void layOutColumns() {
        for (int i = 0; i < rows.getColumnCount(); i++) {
            Column<R> declared = rows.column(i);
            TableColumn column = table.getColumnModel().getColumn(i);
            column.setCellRenderer(new SheetCell<>(declared));
            column.setHeaderRenderer(new Heading(table, declared.kind()));
        }
        scaleColumns();
    }

    /** Widths in the size the window is shown at; called again when that changes. */
    private void scaleColumns() {
        for (int at = 0; at < table.getColumnCount(); at++) {
            TableColumn column = table.getColumnModel().getColumn(at);
            Column<R> declared = rows.column(column.getModelIndex());
            column.setMinWidth(UIScale.scale(Math.min(declared.width(), 60)));
            column.setMaxWidth(declared.grows() ? Integer.MAX_VALUE : UIScale.scale(declared.width() * 2));
            column.setPreferredWidth(UIScale.scale(declared.width()));
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (built) {
            scaleColumns();
        }
    }

    private void bindKeys() {
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Keys.plain(KeyEvent.VK_ENTER), "wm-open");
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Keys.menuShift(KeyEvent.VK_S), "wm-sort");
        table.getActionMap().put("wm-sort", action(() -> {
            int at = table.getSelectedColumn();
            sorter.toggleSortOrder(table.convertColumnIndexToModel(Math.max(0, at)));
        }));
    }

    private void showCard() {
        cards.show(this, rows.getRowCount() == 0 && empty != null ? EMPTY : ROWS);
    }

    private void tellSelection() {
        R row = selected();
        onSelect.forEach(listener -> listener.accept(row));
    }

    private static AbstractAction action(Runnable work) {
        return new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        };
    }

    /** A heading, aligned like its column, drawn by the look. */
    private static final class Heading extends DefaultTableCellRenderer {
        private final JTable table;
        private final Column.Kind kind;

        Heading(JTable table, Column.Kind kind) {
            this.table = table;
            this.kind = kind;
        }

        @Override
        public java.awt.Component getTableCellRendererComponent(
                JTable t, @Nullable Object value, boolean selected, boolean focused, int row, int column) {
            java.awt.Component drawn = table.getTableHeader()
                    .getDefaultRenderer()
                    .getTableCellRendererComponent(t, value, selected, focused, row, column);
            if (drawn instanceof javax.swing.JLabel label) {
                label.setHorizontalAlignment(
                        switch (kind) {
                            case TEXT -> SwingConstants.LEADING;
                            case FIGURE -> SwingConstants.TRAILING;
                            case MARK -> SwingConstants.CENTER;
                        });
            }
            return drawn;
        }
    }
}
