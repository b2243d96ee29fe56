package witnessmark.desktop.faces;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.JPanel;
import witnessmark.desktop.form.Palette;

/** The levels of a filled-in face, from bare to blue. */
final class Legend extends JPanel {
    private static final int WIDE = 150;
    private static final int HIGH = 14;

    Legend(String name) {
        setOpaque(false);
        getAccessibleContext().setAccessibleName(name);
    }

    @Override
    public Dimension getPreferredSize() {
        return UIScale.scale(new Dimension(WIDE, HIGH));
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        Color[] colours = FaceMapPainter.colours();
        int each = getWidth() / colours.length;
        for (int i = 0; i < colours.length; i++) {
            g.setColor(colours[colours.length - 1 - i]);
            g.fillRect(i * each, 0, each, getHeight() - 1);
        }
        g.setColor(Palette.INK2.colour());
        g.drawRect(0, 0, each * colours.length - 1, getHeight() - 1);
    }
}
