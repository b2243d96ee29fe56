package witnessmark.desktop.engines;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JTable;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;

/**
 * A list whose figures can be opened: by a click on one, or by Enter on the row, which opens the figure in the column
 * in hand or the row's first. Left and Right go from column to column.
 *
 * @param <R> the row
 */
final class FigureTable<R> {
    private final List<FigureColumn<R>> columns;
    private final SheetTable<R> sheet;
    private final Consumer<Shown> open;

    /** @param open told the figure that is opened */
    FigureTable(
            String name, List<FigureColumn<R>> columns, Function<? super R, ?> id, String tip, Consumer<Shown> open) {
        this.columns = List.copyOf(columns);
        this.open = open;
        this.sheet = new SheetTable<>(
                name, columns.stream().map(FigureColumn::column).toList(), id);
        JTable table = sheet.table();
        table.putClientProperty("FlatLaf.style", "showCellFocusIndicator: true");
        table.setToolTipText(tip);
        sheet.onOpen(row -> openInHand(row));
        Pointer pointer = new Pointer();
        table.addMouseListener(pointer);
        table.addMouseMotionListener(pointer);
    }

    /** Lets people filter the list and find it again as they left it. */
    FigureTable<R> with(SheetTools tools, String key) {
        sheet.with(tools, key);
        return this;
    }

    SheetTable<R> sheet() {
        return sheet;
    }

    JTable table() {
        return sheet.table();
    }

    private void openInHand(R row) {
        Runnable inHand = at(row, table().getSelectedColumn());
        if (inHand != null) {
            inHand.run();
            return;
        }
        for (FigureColumn<R> column : columns) {
            Runnable first = column.figure() == null ? null : way(row, column);
            if (first != null) {
                first.run();
                return;
            }
        }
    }

    private @Nullable Runnable at(R row, int viewColumn) {
        return viewColumn < 0 ? null : way(row, columns.get(table().convertColumnIndexToModel(viewColumn)));
    }

    /** What a row opens from a column, or null when nothing. */
    private @Nullable Runnable way(R row, FigureColumn<R> column) {
        if (column.way() != null) {
            return column.way().apply(row);
        }
        Shown figure = column.figure() == null ? null : column.figure().apply(row);
        return figure == null ? null : () -> open.accept(figure);
    }

    private @Nullable Runnable at(Point point) {
        int row = table().rowAtPoint(point);
        return row < 0 ? null : at(sheet.shown().get(row), table().columnAtPoint(point));
    }

    /** Opens what is clicked on, and shows a hand over it. */
    private final class Pointer extends MouseAdapter {
        @Override
        public void mouseClicked(MouseEvent e) {
            Runnable way = at(e.getPoint());
            if (way != null && e.getButton() == MouseEvent.BUTTON1 && e.getClickCount() == 1) {
                way.run();
            }
        }

        @Override
        public void mouseMoved(MouseEvent e) {
            int shape = at(e.getPoint()) == null ? Cursor.DEFAULT_CURSOR : Cursor.HAND_CURSOR;
            table().setCursor(Cursor.getPredefinedCursor(shape));
        }
    }
}
