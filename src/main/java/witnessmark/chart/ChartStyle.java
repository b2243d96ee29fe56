package witnessmark.chart;

import java.awt.Color;
import java.awt.Font;
import java.util.List;

/**
 * The colours and fonts a chart is drawn with.
 *
 * @param sheet behind everything
 * @param ink titles, limits
 * @param ink2 labels
 * @param rule gridlines
 * @param band shaded stretches
 * @param series the colours of the lines, in order, at least {@link Chart#MOST_IN_COLOUR}
 * @param text labels; its size decides how thick lines are
 * @param title the finding
 */
public record ChartStyle(
        Color sheet, Color ink, Color ink2, Color rule, Color band, List<Color> series, Font text, Font title) {
    /** Told apart by normal, red-blind, green-blind and blue-blind sight, each at least 4.5 to 1 on its sheet. */
    private static final List<Color> ON_LIGHT =
            List.of(new Color(0x0B6FA4), new Color(0x9D5964), new Color(0x7A6E00), new Color(0x3C3502));

    private static final List<Color> ON_DARK =
            List.of(new Color(0x56B4E9), new Color(0xD08791), new Color(0x97A317), new Color(0xCEE696));

    private static final double PIXELS_AT_NORMAL = 12.0;

    public ChartStyle {
        series = List.copyOf(series);
        if (series.size() < Chart.MOST_IN_COLOUR) {
            throw new IllegalArgumentException("too few colours for lines");
        }
    }

    /** A style on a sheet of this colour, with the lines' colours that go with it. */
    public static ChartStyle on(Color sheet, Color ink, Color ink2, Color rule, Color band, Font text, Font title) {
        return new ChartStyle(sheet, ink, ink2, rule, band, isDark(sheet) ? ON_DARK : ON_LIGHT, text, title);
    }

    /** For paper and pictures that leave the program: dark ink on white, whatever the window looks like. */
    public static ChartStyle onPaper(Font text, Font title) {
        return on(
                Color.WHITE,
                new Color(0x1B2226),
                new Color(0x515A5F),
                new Color(0xD3CEC3),
                new Color(0xF1EEE8),
                text,
                title);
    }

    /** What one pixel of the design measures at the size of this style. */
    double scale() {
        return text.getSize2D() / PIXELS_AT_NORMAL;
    }

    private static boolean isDark(Color sheet) {
        return 0.2126 * sheet.getRed() + 0.7152 * sheet.getGreen() + 0.0722 * sheet.getBlue() < 128;
    }
}
