package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.JPanel;

/** A thin line between rows. It carries no meaning. Constrain it with {@code growx, span}. */
public final class Hairline extends JPanel {
    public Hairline() {
        setOpaque(false);
        setFocusable(false);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(1, Math.max(1, UIScale.scale(1)));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Palette.RULE.colour());
        g.fillRect(0, 0, getWidth(), getHeight());
    }
}
