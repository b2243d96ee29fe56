package witnessmark.chart;

import java.awt.Color;
import java.util.List;

/**
 * The colours and fonts a face map is drawn with.
 *
 * @param base of sheet, ink and letters
 * @param bare of a face nobody filled in
 * @param levels from where a plate touches to where it is low; {@link FaceShading#LEVELS} of them
 * @param edge around a healthy reading and a small hole
 * @param low of what is low
 * @param over of what is past its limit
 * @param typed of what is typed and what is in hand
 */
public record FaceMapStyle(
        ChartStyle base, Color bare, List<Color> levels, Color edge, Color low, Color over, Color typed) {
    /** How much of the blue a level has, from where a plate touches. */
    private static final double[] SHARE = {0.72, 0.52, 0.34, 0.16, 0};

    public FaceMapStyle {
        levels = List.copyOf(levels);
        if (levels.size() != FaceShading.LEVELS) {
            throw new IllegalArgumentException("a colour for each level");
        }
    }

    /** A style whose levels go from this blue to the sheet. */
    public static FaceMapStyle of(
            ChartStyle base, Color bare, Color blue, Color edge, Color low, Color over, Color typed) {
        Color[] levels = new Color[FaceShading.LEVELS];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = mixed(blue, base.sheet(), SHARE[i]);
        }
        return new FaceMapStyle(base, bare, List.of(levels), edge, low, over, typed);
    }

    /** For paper, readable without a colour: grey where a plate touches, bare and hatched where the face is low. */
    public static FaceMapStyle onPaper(ChartStyle paper) {
        return of(paper, Color.WHITE, new Color(0x8A8A8A), new Color(0x9A9A9A), Color.BLACK, Color.BLACK, Color.BLACK);
    }

    private static Color mixed(Color one, Color other, double share) {
        return new Color(
                part(one.getRed(), other.getRed(), share),
                part(one.getGreen(), other.getGreen(), share),
                part(one.getBlue(), other.getBlue(), share));
    }

    private static int part(int one, int other, double share) {
        return (int) Math.round(share * one + (1 - share) * other);
    }

    /** What one pixel of the design measures. */
    double scale() {
        return base.scale();
    }
}
