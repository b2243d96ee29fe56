package witnessmark.desktop.faces;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import javax.swing.JPanel;
import witnessmark.chart.DrawnFaceMap;

/** The levels of a filled-in face, from low to blue. */
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
        int in = UIScale.scale(1);
        DrawnFaceMap.legend(
                (Graphics2D) g,
                FaceMapLook.now(),
                new Rectangle2D.Double(in, in, getWidth() - 2 * in, getHeight() - 2 * in));
    }
}
