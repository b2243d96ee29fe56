package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTable;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;
import witnessmark.wording.Texts;

/**
 * Which columns of a list are shown, in which order and how wide. Columns are known by their number as declared, widths
 * are in unscaled pixels.
 */
final class SheetColumns<R> {
    private static final int ROWS_MEASURED = 200;

    private final SheetRows<R> rows;
    private final SheetGrid table;
    private final List<TableColumn> all = new ArrayList<>();
    private final List<Integer> order = new ArrayList<>();
    private final Set<Integer> hidden = new HashSet<>();
    private final Set<Integer> withdrawn = new HashSet<>();
    private final Map<Integer, Integer> widths = new HashMap<>();
    private Runnable changed = () -> {};
    private boolean arranging;

    SheetColumns(SheetRows<R> rows) {
        this.rows = rows;
        this.table = new SheetGrid(rows, this::grows);
        for (int i = 0; i < rows.getColumnCount(); i++) {
            all.add(table.getColumnModel().getColumn(i));
            order.add(i);
        }
        hideThoseOnAsking();
        arrange();
        scale();
        table.getColumnModel().addColumnModelListener(new Ear());
    }

    SheetGrid table() {
        return table;
    }

    /** The column as declared, shown or not. */
    TableColumn column(int index) {
        return all.get(index);
    }

    /** Told when a person changes something. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    boolean isShown(int index) {
        return !hidden.contains(index) && !withdrawn.contains(index);
    }

    /** Shows or hides a column, as a person chose; the last one shown stays. */
    void choose(int index, boolean shown) {
        long left = order.stream().filter(this::isShown).count();
        if (shown ? hidden.remove(index) : left > 1 && hidden.add(index)) {
            arrange();
            changed.run();
        }
    }

    /** Whether a column has anything to say at all. */
    void offer(int index, boolean yes) {
        if (yes ? withdrawn.remove(index) : withdrawn.add(index)) {
            arrange();
        }
    }

    /** Everything as declared. */
    void reset() {
        hidden.clear();
        hideThoseOnAsking();
        widths.clear();
        order.sort(null);
        arrange();
        scale();
        fit();
        changed.run();
    }

    private void hideThoseOnAsking() {
        IntStream.range(0, all.size())
                .filter(index -> rows.column(index).isOnAsking())
                .forEach(hidden::add);
    }

    /** Widths in the size the window is shown at; called again when that changes. */
    void scale() {
        for (int i = 0; i < all.size(); i++) {
            Column<R> declared = rows.column(i);
            TableColumn column = all.get(i);
            column.setMinWidth(UIScale.scale(Math.min(declared.width(), 40)));
            column.setPreferredWidth(UIScale.scale(widths.getOrDefault(i, declared.width())));
        }
    }

    /** Makes room for the longest figure: figures are never cut, words may be. */
    void fit() {
        for (int i = 0; i < all.size(); i++) {
            Column<R> declared = rows.column(i);
            if (declared.kind() == Column.Kind.FIGURE && !widths.containsKey(i)) {
                int declaredWidth = UIScale.scale(declared.width());
                int natural = Math.min(natural(i), 2 * declaredWidth);
                all.get(i).setPreferredWidth(Math.max(declaredWidth, natural));
            }
        }
    }

    /** The menu that shows and hides columns. */
    JPopupMenu menu(Texts texts) {
        JPopupMenu menu = new JPopupMenu();
        for (int i = 0; i < all.size(); i++) {
            if (!withdrawn.contains(i)) {
                int index = i;
                JCheckBoxMenuItem item = new JCheckBoxMenuItem(rows.column(i).title(), isShown(i));
                item.addActionListener(e -> choose(index, item.isSelected()));
                menu.add(Lettering.plain(item));
            }
        }
        menu.addSeparator();
        JMenuItem first = Lettering.plain(new JMenuItem(texts.get("form.list.asAtFirst")));
        first.addActionListener(e -> reset());
        menu.add(first);
        return menu;
    }

    /** As text, to be remembered: how many there are, then each in order, with its width where somebody set it. */
    String state() {
        StringBuilder state = new StringBuilder(Integer.toString(all.size()));
        for (int index : order) {
            Integer width = widths.get(index);
            state.append(',').append(hidden.contains(index) ? "-" : "").append(index);
            state.append(width == null ? "" : "=" + width);
        }
        return state.toString();
    }

    /** Takes up what {@link #state} said; a text that does not fit these columns changes nothing. */
    void restore(String state) {
        String[] parts = state.split(",", -1);
        Set<Integer> seen = new HashSet<>();
        boolean fits = parts.length == all.size() + 1 && parts[0].equals(Integer.toString(all.size()));
        for (int i = 1; i < parts.length; i++) {
            fits &= parts[i].matches("-?\\d{1,3}(=\\d{1,4})?") && seen.add(index(parts[i]));
        }
        if (!fits || seen.stream().anyMatch(index -> index >= all.size())) {
            return;
        }
        order.clear();
        hidden.clear();
        widths.clear();
        for (String part : List.of(parts).subList(1, parts.length)) {
            int index = index(part);
            order.add(index);
            if (part.startsWith("-")) {
                hidden.add(index);
            }
            int width = part.indexOf('=');
            if (width > 0) {
                widths.put(index, Integer.valueOf(part.substring(width + 1)));
            }
        }
        if (hidden.size() == all.size()) {
            hidden.clear();
        }
        scale();
        arrange();
    }

    private static int index(String part) {
        String number = part.startsWith("-") ? part.substring(1) : part;
        int width = number.indexOf('=');
        return Integer.parseInt(width < 0 ? number : number.substring(0, width));
    }

    private boolean grows(TableColumn column) {
        int index = column.getModelIndex();
        return rows.column(index).grows() && !widths.containsKey(index);
    }

    private void arrange() {
        arranging = true;
        all.forEach(table.getColumnModel()::removeColumn);
        order.stream().filter(this::isShown).map(all::get).forEach(table.getColumnModel()::addColumn);
        arranging = false;
    }

    /** How wide the heading and the first rows would have a column. */
    private int natural(int index) {
        TableColumn column = all.get(index);
        Component heading = column.getHeaderRenderer() == null
                ? table.getTableHeader()
                : column.getHeaderRenderer()
                        .getTableCellRendererComponent(table, column.getHeaderValue(), false, false, -1, 0);
        return IntStream.range(0, Math.min(ROWS_MEASURED, rows.getRowCount()))
                .map(row -> cell(column, row).getPreferredSize().width)
                .reduce(column.getHeaderRenderer() == null ? 0 : heading.getPreferredSize().width, Math::max);
    }

    private Component cell(TableColumn column, int row) {
        return column.getCellRenderer().getTableCellRendererComponent(table, rows.row(row), false, false, row, 0);
    }

    /** Takes the order on the screen up; those not on it keep their places. */
    private void follow() {
        List<Integer> shown = IntStream.range(0, table.getColumnCount())
                .mapToObj(at -> table.getColumnModel().getColumn(at).getModelIndex())
                .toList();
        int next = 0;
        for (int i = 0; i < order.size(); i++) {
            if (isShown(order.get(i))) {
                order.set(i, shown.get(next++));
            }
        }
    }

    /** What a person does to the headings with the mouse. */
    private final class Ear implements TableColumnModelListener {
        @Override
        public void columnMoved(TableColumnModelEvent e) {
            if (!arranging && e.getFromIndex() != e.getToIndex()) {
                follow();
                changed.run();
            }
        }

        @Override
        public void columnMarginChanged(ChangeEvent e) {
            JTable shown = table;
            @Nullable
            TableColumn dragged = shown.getTableHeader() == null
                    ? null
                    : shown.getTableHeader().getResizingColumn();
            if (!arranging && dragged != null) {
                widths.put(dragged.getModelIndex(), UIScale.unscale(dragged.getWidth()));
                changed.run();
            }
        }

        @Override
        public void columnAdded(TableColumnModelEvent e) {
            // done by arrange alone
        }

        @Override
        public void columnRemoved(TableColumnModelEvent e) {
            // done by arrange alone
        }

        @Override
        public void columnSelectionChanged(ListSelectionEvent e) {
            // of no interest
        }
    }
}
