package witnessmark.wording;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import witnessmark.domain.Finding;
import witnessmark.study.result.Outline;
import witnessmark.study.result.StripLine;

/** Words where on its part a mark is: which side of it, and how far out or along. */
public final class PartPlaceWords {
    /** Sides of a part that is gone round, from where the counting begins. */
    private static final int SIDES = 8;

    private static final int QUARTERS = 4;
    /** Up to here, in hundredths, a place on a disc has no side. */
    private static final int MIDDLE = 20;
    /** From here it is near the edge of a disc. */
    private static final int EDGE = 70;

    private static final int THIRD = 33;

    private final Texts texts;

    public PartPlaceWords(Texts texts) {
        this.texts = texts;
    }

    /** {@code exhaust side, near the edge}; empty where nobody said, or nothing is drawn of such a place. */
    public Optional<String> of(Finding finding) {
        StripLine line = StripLine.of(finding);
        Integer around = finding.aroundDegrees();
        Integer out = finding.outPercent();
        return line == null || around == null || out == null
                ? Optional.empty()
                : Optional.of(
                        line.outline() == Outline.NONE
                                ? figures(line.outline(), around, out)
                                : of(line.outline(), around, out));
    }

    /** The figures themselves: {@code 92° round, 50 % out}. */
    public String figures(Outline outline, int around, int out) {
        return texts.get(outline.disc() ? "strip.place.figures" : "strip.place.figures.along", around, out);
    }

    /**
     * The same of an outline.
     *
     * @param around degrees from where it is counted
     * @param out hundredths
     */
    public String of(Outline outline, int around, int out) {
        if (outline == Outline.HALF) {
            return texts.get("strip.place.both", half(around), along("width", out));
        }
        if (outline.disc()) {
            return out < MIDDLE
                    ? texts.get("strip.place.middle")
                    : texts.get(
                            "strip.place.both",
                            side(outline, around),
                            texts.get(out < EDGE ? "strip.place.halfway" : "strip.place.edge"));
        }
        return texts.get(
                "strip.place.both", side(outline, around), along(outline == Outline.ROUND ? "height" : "width", out));
    }

    private String along(String which, int out) {
        return texts.get("strip.place." + which + "." + (out < THIRD ? "first" : out > 100 - THIRD ? "last" : "mid"));
    }

    private String half(int around) {
        int sixth = Math.min(around, Outline.HALF.degrees()) * 6 / (Outline.HALF.degrees() + 1);
        return texts.get("strip.place.half."
                + (sixth == 0
                        ? "inlet_parting"
                        : sixth == 1 ? "inlet" : sixth <= 3 ? "middle" : sixth == 4 ? "exhaust" : "exhaust_parting"));
    }

    private String side(Outline outline, int around) {
        int eighth = Math.floorMod(Math.round(around * SIDES / 360f), SIDES);
        return texts.get("strip.place." + (standing(outline) ? "upright." : "lying.") + eighth);
    }

    private static boolean standing(Outline outline) {
        return outline == Outline.DISC || outline == Outline.ROUND;
    }

    /** What lies a quarter, a half and three quarters of the way round from where the counting begins, that first; for a half its two ends. */
    public List<String> quarters(Outline outline) {
        return outline == Outline.HALF
                ? List.of(texts.get("strip.place.lying.6"), texts.get("strip.place.lying.2"))
                : IntStream.range(0, QUARTERS)
                        .mapToObj(quarter ->
                                texts.get("strip.place." + (standing(outline) ? "upright." : "lying.") + 2 * quarter))
                        .toList();
    }

    /** The edge that is counted to of half a shell. */
    public String farEdge(Outline outline) {
        return texts.get("strip.place.to." + outline.name().toLowerCase(Locale.ROOT));
    }

    /** The edge that is counted from of what is laid flat. */
    public String edge(Outline outline) {
        return texts.get("strip.place.from." + outline.name().toLowerCase(Locale.ROOT));
    }
}
