package witnessmark.desktop.engines;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.LifeStrip;
import witnessmark.desktop.form.SeamState;

/** Draws the life strip of a row of the build. Nothing is made per cell. */
final class StripCell implements TableCellRenderer {
    private final JPanel cell = new JPanel(new BorderLayout()) {
        /** A cell that is in no window is not laid out by itself, and its picture would lack the strip. */
        @Override
        public void setBounds(int x, int y, int width, int height) {
            super.setBounds(x, y, width, height);
            doLayout();
        }
    };
    private final LifeStrip strip = new LifeStrip(Life.notKnown(), SeamState.NOT_KNOWN, "");

    StripCell() {
        cell.add(strip);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, @Nullable Object value, boolean selected, boolean focused, int row, int column) {
        int side = UIScale.scale(8);
        int edge = UIScale.scale(1);
        cell.setBorder(BorderFactory.createEmptyBorder(edge, side, edge, side));
        cell.setBackground(table.getBackground());
        if (value instanceof BuildLine line) {
            strip.setVisible(line.part() != null);
            strip.show(line.strip(), line.state(), line.left());
            cell.getAccessibleContext().setAccessibleName(line.left());
            cell.setToolTipText(line.tip().isEmpty() ? null : line.tip());
        }
        return cell;
    }
}
