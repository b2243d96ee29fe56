package witnessmark.desktop.form;

import java.awt.Component;
import java.awt.Font;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import org.jspecify.annotations.Nullable;

/** Draws one column's cells: one shared label, nothing made per cell. */
final class SheetCell<R> extends DefaultTableCellRenderer {
    private final Column<R> column;
    private final Map<SeamState, SeamIcon> marks = new EnumMap<>(SeamState.class);
    private final Map<SeamState, SeamIcon> inHand = new EnumMap<>(SeamState.class);

    SheetCell(Column<R> column) {
        this.column = column;
        Lettering.plain(this);
        for (SeamState state : SeamState.values()) {
            SeamIcon mark = new SeamIcon(state, 20);
            marks.put(state, mark);
            inHand.put(state, mark.onPlate());
        }
        setHorizontalAlignment(
                switch (column.kind()) {
                    case TEXT -> SwingConstants.LEADING;
                    case FIGURE -> SwingConstants.TRAILING;
                    case MARK -> SwingConstants.CENTER;
                });
    }

    @Override
    @SuppressWarnings("unchecked") // every cell of the model holds the row
    public Component getTableCellRendererComponent(
            JTable table, @Nullable Object value, boolean selected, boolean focused, int row, int index) {
        super.getTableCellRendererComponent(table, "", selected, focused, row, index);
        if (value == null) {
            return this;
        }
        R shown = (R) value;
        String text = column.textOf(shown);
        SeamState state = column.stateOf(shown);
        if (column.kind() == Column.Kind.MARK && state != null) {
            setIcon((selected ? inHand : marks).get(state));
            getAccessibleContext().setAccessibleName(text);
            setToolTipText(text);
            return this;
        }
        setText(text);
        getAccessibleContext().setAccessibleName(text);
        setToolTipText(null);
        boolean loud = state != null && state != SeamState.WITHIN && state != SeamState.APART;
        if (column.isStrong() || loud) {
            setFont(table.getFont().deriveFont(Font.BOLD));
        }
        if (state != null && !selected) {
            setForeground(state.ink().colour());
        }
        return this;
    }
}
