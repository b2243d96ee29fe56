package witnessmark.desktop.form;

import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import org.jspecify.annotations.Nullable;

/** A heading of a list, aligned like its column and drawn by the look; the whole is in its tooltip where it is cut. */
final class SheetHeading extends DefaultTableCellRenderer {
    private final JTable table;
    private final int side;

    SheetHeading(JTable table, Column<?> declared) {
        this.table = table;
        this.side = declared.side();
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable shown, @Nullable Object value, boolean selected, boolean focused, int row, int column) {
        Component drawn = table.getTableHeader()
                .getDefaultRenderer()
                .getTableCellRendererComponent(shown, value, selected, focused, row, column);
        if (drawn instanceof JLabel label) {
            label.setHorizontalAlignment(side);
            boolean cut = column >= 0
                    && label.getPreferredSize().width
                            > shown.getColumnModel().getColumn(column).getWidth();
            label.setToolTipText(cut ? label.getText() : null);
        }
        return drawn;
    }
}
