package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Graphics;
import javax.swing.JComponent;

/** The ring round what has the focus and paints itself. */
public final class FocusRing {
    private static final int WIDE = 2;

    private FocusRing() {}

    /** Draws it just within the edges of the component, if that has the focus. */
    public static void paint(JComponent component, Graphics g) {
        if (component.isFocusOwner()) {
            g.setColor(Palette.MARK.colour());
            int wide = UIScale.scale(WIDE);
            for (int i = 0; i < wide; i++) {
                g.drawRect(i, i, component.getWidth() - 1 - 2 * i, component.getHeight() - 1 - 2 * i);
            }
        }
    }
}
