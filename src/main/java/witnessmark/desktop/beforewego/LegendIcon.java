package witnessmark.desktop.beforewego;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import javax.swing.Icon;
import witnessmark.desktop.form.Palette;

/** A piece of a life strip, for the line that says what its parts mean. */
final class LegendIcon implements Icon {
    private static final int WIDE = 22;
    private static final int SEAM_WIDE = 2;
    private static final int BAR = 8;
    private static final int HIGH = 16;

    private final Palette colour;
    private final boolean seam;

    private LegendIcon(Palette colour, boolean seam) {
        this.colour = colour;
        this.seam = seam;
    }

    static LegendIcon bar(Palette colour) {
        return new LegendIcon(colour, false);
    }

    static LegendIcon seam() {
        return new LegendIcon(Palette.SEAM, true);
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(seam ? SEAM_WIDE : WIDE);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(HIGH);
    }

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        int high = seam ? getIconHeight() : UIScale.scale(BAR);
        g.setColor(colour.colour());
        g.fillRect(x, y + (getIconHeight() - high) / 2, getIconWidth(), high);
    }
}
