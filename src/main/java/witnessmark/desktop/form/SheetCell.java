package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.DrawnBar;
import witnessmark.chart.StackedBar;

/** Draws one column's cells: one shared label, nothing made per cell. */
final class SheetCell<R> extends DefaultTableCellRenderer {
    private static final int BAR = 12;

    private final Column<R> column;
    private final Map<SeamState, SeamIcon> marks = new EnumMap<>(SeamState.class);
    private final Map<SeamState, SeamIcon> inHand = new EnumMap<>(SeamState.class);
    private transient @Nullable StackedBar bar;

    SheetCell(Column<R> column) {
        this.column = column;
        Lettering.plain(this);
        for (SeamState state : SeamState.values()) {
            SeamIcon mark = new SeamIcon(state, 20);
            marks.put(state, mark);
            inHand.put(state, mark.onPlate());
        }
        setHorizontalAlignment(column.side());
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
            if (column.isWorded()) {
                setText(text);
                inked(table, state, selected);
            }
            return this;
        }
        bar = column.barOf(shown);
        setText(bar == null ? text : "");
        getAccessibleContext().setAccessibleName(text);
        setToolTipText(null);
        if (column.isStrong()) {
            setFont(table.getFont().deriveFont(Font.BOLD));
        }
        if (state != null) {
            inked(table, state, selected);
        } else if (bar != null && !selected) {
            setForeground(SeamState.WITHIN.ink().colour());
        }
        return this;
    }

    /** Words in the colour of a state, bolder unless it is quiet; in the row in hand they keep its ink. */
    private void inked(JTable table, SeamState state, boolean selected) {
        if (state != SeamState.WITHIN && state != SeamState.APART) {
            setFont(table.getFont().deriveFont(Font.BOLD));
        }
        if (!selected) {
            setForeground(state.ink().colour());
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        StackedBar drawn = bar;
        if (drawn != null) {
            Graphics2D g = (Graphics2D) graphics.create();
            double high = UIScale.scale((float) BAR);
            Color paper = getBackground();
            new DrawnBar(g, getForeground(), paper, UIScale.scale(1f))
                    .draw(
                            drawn,
                            new Rectangle2D.Double(
                                    UIScale.scale(6f),
                                    Math.rint((getHeight() - high) / 2),
                                    getWidth() - UIScale.scale(12f),
                                    high));
            g.dispose();
        }
    }
}
