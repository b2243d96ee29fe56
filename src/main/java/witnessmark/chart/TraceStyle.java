package witnessmark.chart;

import java.awt.Color;

/**
 * The colours rows of a trace are drawn with.
 *
 * @param base of sheet, ink, lines and letters
 * @param over of what an engine must not do
 * @param wash behind it
 * @param hair the cross-hair
 */
public record TraceStyle(ChartStyle base, Color over, Color wash, Color hair) {
    /** For paper and pictures that leave the program. */
    public static TraceStyle onPaper(ChartStyle paper) {
        return new TraceStyle(paper, new Color(0xA12A14), new Color(0xF3DDD8), new Color(0x1B2226));
    }

    double scale() {
        return base.scale();
    }
}
