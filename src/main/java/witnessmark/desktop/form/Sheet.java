package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Graphics;
import javax.swing.JPanel;

/** A flat sheet with one hairline round it, laid out by MigLayout. Sheets are never put on sheets. */
public final class Sheet extends JPanel {
    /** @param columns MigLayout column constraints, for example {@code [0::,grow,fill][]} */
    public Sheet(String columns) {
        this("", columns, "");
    }

    /** @param layout further layout constraints, for example {@code fill}; padding is set already */
    public Sheet(String layout, String columns, String rows) {
        super(new FormLayout(
                "insets 12 18 14 18, gapx 16, gapy 4" + (layout.isEmpty() ? "" : ", " + layout), columns, rows));
        Styles.as(Styles.SHEET, this);
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        Color edge = Palette.SHEET_EDGE.colour();
        g.setColor(edge);
        int line = Math.max(1, UIScale.scale(1));
        g.fillRect(0, 0, getWidth(), line);
        g.fillRect(0, getHeight() - line, getWidth(), line);
        g.fillRect(0, 0, line, getHeight());
        g.fillRect(getWidth() - line, 0, line, getHeight());
    }
}
