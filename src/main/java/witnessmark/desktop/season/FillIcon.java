package witnessmark.desktop.season;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.Icon;
import witnessmark.chart.DrawnBar;
import witnessmark.chart.StackedBar;
import witnessmark.desktop.form.Palette;

/** How a piece of a bar is filled, for the legend. */
final class FillIcon implements Icon {
    private final StackedBar bar;

    FillIcon(StackedBar.Fill fill) {
        this.bar = new StackedBar(List.of(new StackedBar.Piece(fill, 1)));
    }

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        new DrawnBar(g, Palette.WITHIN.colour(), Palette.SHEET.colour(), UIScale.scale(1f))
                .draw(bar, new Rectangle2D.Double(x, y, getIconWidth(), getIconHeight()));
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(24);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(12);
    }
}
