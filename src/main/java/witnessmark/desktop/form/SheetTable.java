package witnessmark.desktop.form;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
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
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.SwingUtilities;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.task.EventThread;

/**
 * A list in columns that is read, sorted, filtered and copied, not typed into. Tab leaves it, Enter or a double click
 * opens a row, the selection is kept by record when other rows are shown.
 *
 * @param <R> the row, an immutable view record
 */
public final class SheetTable<R> extends JPanel {
    /** What {@code ActionMap} calls filtering, sorting by the column in hand and choosing columns. */
    public static final String FILTER = "wm-filter";

    public static final String SORT = "wm-sort";
    public static final String COLUMNS = "wm-columns";

    private static final String ROWS = "rows";
    private static final String EMPTY = "empty";
    private static final String NONE = "none";

    private final SheetRows<R> rows;
    private final SheetSorter<R> sorter;
    private final SheetColumns<R> columns;
    private final SheetGrid table;
    private final Function<? super R, ?> id;
    private final CardLayout cards = new CardLayout();
    private final JPanel body = new JPanel(cards);
    private final List<Consumer<@Nullable R>> onSelect = new ArrayList<>();
    private @Nullable JComponent empty;
    private @Nullable SheetFilter filter;
    private @Nullable SheetTotals<R> totals;
    private @Nullable Object kept;
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
        this.columns = new SheetColumns<>(rows);
        this.table = this.columns.table();
        this.id = id;
        setLayout(new BorderLayout());
        setOpaque(false);
        body.setOpaque(false);
        table.setRowSorter(sorter);
        table.getAccessibleContext().setAccessibleName(name);
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        table.setFillsViewportHeight(true);
        table.getTableHeader().setReorderingAllowed(true);
        table.putClientProperty("terminateEditOnFocusLost", true);
        Traversal.tabLeaves(table);
        layOutColumns();
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Keys.plain(KeyEvent.VK_ENTER), "wm-open");
        getActionMap().put(SORT, action(this::sortByColumnInHand));
        new SheetCopy<>(this).install();
        table.getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting() && !showing) {
                tellSelection();
            }
        });
        table.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                showCursor();
                boolean byKey = e.getCause() == FocusEvent.Cause.TRAVERSAL_FORWARD
                        || e.getCause() == FocusEvent.Cause.TRAVERSAL_BACKWARD;
                if (byKey) {
                    scrollRectToVisible(new Rectangle(0, 0, getWidth(), getHeight()));
                    table.scrollRectToVisible(
                            table.getCellRect(table.getSelectedRow(), table.getSelectedColumn(), true));
                }
            }
        });
        JScrollPane scroll = new PassingOn(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        body.add(scroll, ROWS);
        add(body, BorderLayout.CENTER);
        if (columns.stream().anyMatch(Column::isTotalled)) {
            totals = new SheetTotals<>(name, rows, this.columns.table(), scroll, this::shown);
            add(totals, BorderLayout.SOUTH);
        }
        sorter.addRowSorterListener(e -> counted());
        built = true;
    }

    /**
     * Lets people filter the list, choose its columns, and find it again as they left it.
     *
     * @param key the list's own name among the settings
     */
    public SheetTable<R> with(SheetTools tools, String key) {
        SheetFilter made = new SheetFilter(tools, this::filter, this::takeFocus);
        filter = made;
        add(made, BorderLayout.NORTH);
        body.add(nothingMatches(tools), NONE);
        getActionMap().put(FILTER, action(made::ask));
        getActionMap().put(COLUMNS, action(() -> chooseColumns(tools, 0, 0)));
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Keys.plain(KeyEvent.VK_ESCAPE), "wm-unfilter");
        getActionMap().put("wm-unfilter", new Unfilter(made));
        MouseAdapter heading = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                mouseReleased(e);
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                if (e.isPopupTrigger()) {
                    chooseColumns(tools, e.getX(), e.getY());
                }
            }
        };
        table.getTableHeader().addMouseListener(heading);
        new SheetMemory(tools, key, columns, sorter).start();
        return this;
    }

    /**
     * The field that filters stays in sight, and what is typed over the rows goes there. To be called after {@link #with}.
     *
     * @param before what stands left of it
     * @param after what stands right of it
     */
    public SheetTable<R> filterStays(JComponent before, JComponent after) {
        SheetFilter stays = filterField();
        stays.stay();
        JPanel top = new JPanel(new FormLayout("insets 0 0 4 0, gap 0, fillx", "[]12[0::,grow,fill]12[]", "[center]"));
        top.setOpaque(false);
        top.add(before);
        top.add(stays, "wmin 0");
        top.add(after);
        add(top, BorderLayout.NORTH);
        table.addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent e) {
                boolean plain = !e.isControlDown() && !e.isAltDown() && !e.isMetaDown();
                if (plain && Character.isLetterOrDigit(e.getKeyChar())) {
                    e.consume();
                    stays.begin(e.getKeyChar());
                }
            }
        });
        return this;
    }

    /** What stands in the list's place while it has no row: what it is for, and the button that makes one. */
    public SheetTable<R> whenEmpty(JComponent shown) {
        JComponent before = empty;
        if (before != null) {
            body.remove(before);
        }
        empty = shown;
        body.add(shown, EMPTY);
        showCard();
        return this;
    }

    /** Shows other rows in their natural order; sort, filter and selection stay. */
    public void show(List<? extends R> next) {
        R before = selected();
        Object wanted = before == null ? null : id.apply(before);
        showing = true;
        rows.show(next);
        columns.fit();
        boolean found = wanted != null && find(wanted);
        showing = false;
        counted();
        if (table.isFocusOwner()) {
            showCursor(); // the focus was there before there was a row
        }
        if (wanted != null || found) {
            tellSelection();
        }
    }

    /** As high as all its rows, on a page that scrolls itself. */
    public SheetTable<R> whole() {
        columns.table().showAllRows();
        return this;
    }

    /** Whether a column has anything to say of the rows shown; without that it is neither shown nor offered. */
    public void offer(int column, boolean yes) {
        columns.offer(column, yes);
    }

    /** The column as declared, shown or not. */
    public TableColumn column(int index) {
        return columns.column(index);
    }

    /** The row in hand, {@code null} for none. */
    public @Nullable R selected() {
        int at = table.getSelectedRow();
        return at < 0 ? null : rows.row(table.convertRowIndexToModel(at));
    }

    /** Selects the row with the id and brings it into view, out of a filter that hides it. */
    public boolean select(Object wanted) {
        boolean found = find(wanted);
        SheetFilter filtering = filter;
        if (!found && filtering != null && rows.rows().stream().anyMatch(row -> wanted.equals(id.apply(row)))) {
            filtering.clear();
            return find(wanted);
        }
        return found;
    }

    private boolean find(Object wanted) {
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

    /** What can be done with a row, in a menu: on a right click, on the menu key and on Shift+F10. */
    public SheetMenu<R> menu(Function<? super R, List<SheetMenu.Way>> ways) {
        return new SheetMenu<>(this, ways);
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

    SheetColumns<R> columns() {
        return columns;
    }

    SheetRows<R> rows() {
        return rows;
    }

    private void layOutColumns() {
        for (int i = 0; i < rows.getColumnCount(); i++) {
            Column<R> declared = rows.column(i);
            TableColumn column = columns.column(i);
            column.setCellRenderer(new SheetCell<>(declared));
            column.setHeaderRenderer(new SheetHeading(table, declared));
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (built) {
            columns.scale();
            // Cells and headings take up their fonts only after this.
            EventThread.later(columns::fit);
        }
    }

    private void sortByColumnInHand() {
        int at = Math.max(0, table.getSelectedColumn());
        sorter.toggleSortOrder(table.convertColumnIndexToModel(at));
    }

    private void chooseColumns(SheetTools tools, int x, int y) {
        columns.menu(tools.texts()).show(table.getTableHeader(), x, y);
    }

    /** Shows only rows that hold every word. The row in hand comes back with the filter's end. */
    private void filter(List<String> words) {
        R before = selected();
        kept = before == null ? kept : id.apply(before);
        Predicate<String> holding = SheetFilter.holding(words);
        sorter.setRowFilter(
                words.isEmpty()
                        ? null
                        : new RowFilter<SheetRows<R>, Integer>() {
                            @Override
                            public boolean include(Entry<? extends SheetRows<R>, ? extends Integer> entry) {
                                return holding.test(rows.words(entry.getIdentifier()));
                            }
                        });
        Object wanted = kept;
        if (wanted != null && selected() == null) {
            find(wanted);
        }
        counted();
    }

    private JComponent nothingMatches(SheetTools tools) {
        JPanel none = new JPanel(new FormLayout("insets 8 0 0 0, gap 8", "[][]"));
        none.setOpaque(false);
        none.add(Lettering.line(tools.texts().get("form.list.nothing"), Styles.QUIET_INK));
        none.add(Buttons.link(Caption.of(tools.texts().get("form.list.showAll")), () -> {
            SheetFilter filtering = filter;
            if (filtering != null) {
                filtering.clear();
                takeFocus();
            }
        }));
        return none;
    }

    /** Lets a key in the field that filters work on the first row that is left; nothing where there is no such field. */
    void fromFilter(KeyStroke key, Runnable work) {
        SheetFilter filtering = filter;
        if (filtering != null) {
            FormKeys.bind(filtering.field(), key, "wm-from-filter", () -> {
                filtering.settle();
                takeFocus();
                work.run();
            });
        }
    }

    private void takeFocus() {
        showCursor();
        table.requestFocusInWindow();
    }

    /** A list that has the focus shows the row and the cell that keys go on from. */
    private void showCursor() {
        if (table.getRowCount() == 0 || table.getColumnCount() == 0) {
            return;
        }
        if (table.getSelectedRow() < 0) {
            table.setRowSelectionInterval(0, 0);
        }
        if (table.getSelectedColumn() < 0) {
            table.setColumnSelectionInterval(0, 0);
        }
    }

    /** Other rows are shown: the right card, the count, the totals. */
    private void counted() {
        SheetFilter filtering = filter;
        if (filtering != null) {
            filtering.count(table.getRowCount(), rows.getRowCount());
        }
        if (totals != null) {
            totals.update();
        }
        showCard();
    }

    private void showCard() {
        boolean none = table.getRowCount() == 0 && rows.getRowCount() > 0;
        cards.show(body, rows.getRowCount() == 0 && empty != null ? EMPTY : none && filter != null ? NONE : ROWS);
    }

    SheetFilter filterField() {
        return Objects.requireNonNull(filter);
    }

    private void tellSelection() {
        R row = selected();
        onSelect.forEach(listener -> listener.accept(row));
    }

    /** Esc takes a filter away; without one it goes on to whatever else it closes. */
    private static final class Unfilter extends AbstractAction {
        private final SheetFilter filter;

        Unfilter(SheetFilter filter) {
            this.filter = filter;
        }

        @Override
        public boolean isEnabled() {
            return filter.filters();
        }

        @Override
        public void actionPerformed(ActionEvent e) {
            filter.clear();
        }
    }

    private static AbstractAction action(Runnable work) {
        return new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        };
    }

    /** Where there is nothing to scroll here, the wheel scrolls the page. */
    private static final class PassingOn extends JScrollPane {
        PassingOn(SheetGrid rows) {
            super(rows);
        }

        @Override
        protected void processMouseWheelEvent(MouseWheelEvent e) {
            if (getVerticalScrollBar().isVisible() || e.isShiftDown() || getParent() == null) {
                super.processMouseWheelEvent(e);
            } else {
                getParent().dispatchEvent(SwingUtilities.convertMouseEvent(this, e, getParent()));
            }
        }
    }
}
