package witnessmark.desktop.trends;

import com.formdev.flatlaf.util.UIScale;
import java.awt.AlphaComposite;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.SeamState;

/** Draws the last readings of a row as dots, older ones fainter, and the figures of its limits as seams. */
final class DotCell extends DefaultTableCellRenderer {
    private static final float[] FADES = {0.2f, 0.3f, 0.45f, 0.65f, 1f};

    private transient @Nullable TrendLine line;
    private boolean inHand;

    @Override
    public Component getTableCellRendererComponent(
            JTable table, @Nullable Object value, boolean selected, boolean focused, int row, int column) {
        super.getTableCellRendererComponent(table, "", selected, focused, row, column);
        line = value instanceof TrendLine shown ? shown : null;
        inHand = selected;
        String words = line == null ? "" : line.words();
        getAccessibleContext().setAccessibleName(words);
        setToolTipText(words.isEmpty() ? null : words);
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        TrendLine shown = line;
        if (shown == null) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double middle = getHeight() / 2.0;
        double unit = UIScale.scale(1f);
        double left = 8 * unit;
        double wide = getWidth() - 2 * left;
        g.setColor(inHand ? getForeground() : Palette.TRACK.colour());
        g.draw(new Line2D.Double(left, middle, left + wide, middle));
        g.setColor(inHand ? getForeground() : Palette.SEAM.colour());
        for (double limit : shown.row().limits()) {
            g.fill(new Rectangle2D.Double(left + limit * wide - unit, middle - 8 * unit, 2 * unit, 16 * unit));
        }
        boolean quiet = shown.state() == SeamState.WITHIN;
        g.setColor(
                inHand
                        ? getForeground()
                        : (quiet ? Palette.WITHIN : shown.state().ink()).colour());
        int count = shown.row().dots().size();
        for (int i = 0; i < count; i++) {
            g.setComposite(AlphaComposite.SrcOver.derive(FADES[FADES.length - count + i]));
            double half = (i == count - 1 ? 4.5 : 3.5) * unit;
            double x = left + shown.row().dots().get(i) * wide;
            g.fill(new Ellipse2D.Double(x - half, middle - half, 2 * half, 2 * half));
        }
        g.dispose();
    }
}
