package witnessmark.report;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.FaceMap;

/**
 * What stands on the page of a face, in words: its map, its low zones, what was read, its skims.
 *
 * @param title what it is: "Face of head HD-06"
 * @param board on the right of the board: which engine
 * @param under sentences under the board: what the look found, strongest; when and how it was looked at
 * @param logbook whose it is: "Marrowgate Racing"
 * @param day the day looked at: "As of Wed 8 Jul 2026"
 * @param printed when it was printed, in words
 * @param made the same moment, for the file
 * @param caution what nobody may take it for, on every page
 * @param drawing the map; null while nobody wrote down the outline
 * @param zones what is low and what it is, under one heading; null without a low zone
 * @param tables readings, straightedge, marks, skims
 * @param effect what the last skim did, line by line
 */
public record FaceSheet(
        String title,
        String board,
        List<String> under,
        String logbook,
        String day,
        String printed,
        Instant made,
        String caution,
        @Nullable Drawing drawing,
        BuildSheet.@Nullable Group zones,
        List<SeasonSheet.Section> tables,
        List<String> effect) {
    public FaceSheet {
        under = List.copyOf(under);
        tables = List.copyOf(tables);
        effect = List.copyOf(effect);
    }

    /**
     * A map as it lies on the paper.
     *
     * @param exhaustBelow whether the exhaust edge is the lower one
     * @param frontLeft whether the front end lies to the left
     * @param legend what grey and hatching mean
     * @param turned how it lies: "Straight on, not mirrored"
     */
    public record Drawing(FaceMap map, boolean exhaustBelow, boolean frontLeft, String legend, String turned) {}
}
