package witnessmark.desktop.form;

import java.awt.Color;
import java.awt.Font;
import javax.swing.UIManager;
import witnessmark.chart.ChartStyle;

/** The style of charts in the theme in force. Asked for while painting, so that it follows the theme and the size. */
public final class ChartLook {
    private ChartLook() {}

    public static ChartStyle now() {
        Color sheet = Palette.SHEET.colour();
        return ChartStyle.on(
                sheet,
                Palette.INK.colour(),
                Palette.INK2.colour(),
                Palette.RULE.colour(),
                halfway(Palette.RULE.colour(), sheet),
                text(),
                title());
    }

    /** For pictures that leave the program. */
    public static ChartStyle onPaper() {
        Font text = text();
        Font title = title();
        return ChartStyle.onPaper(text.deriveFont(12f), title.deriveFont(15f));
    }

    private static Font text() {
        Font label = UIManager.getFont("Label.font");
        return label.deriveFont(label.getSize2D() * 12 / 13);
    }

    private static Font title() {
        Font heading = UIManager.getFont("h2.font");
        return heading == null ? text().deriveFont(Font.BOLD) : heading;
    }

    private static Color halfway(Color one, Color other) {
        return new Color(
                (one.getRed() + other.getRed()) / 2,
                (one.getGreen() + other.getGreen()) / 2,
                (one.getBlue() + other.getBlue()) / 2);
    }
}
