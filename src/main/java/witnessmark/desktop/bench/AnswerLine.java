package witnessmark.desktop.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.logbook.measuring.Finding;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.FitWords;

/**
 * How one kind of figure stands, in words.
 *
 * @param kind which
 * @param group where it stands in the list
 * @param stand its worst place in one line
 * @param places each place, the nearest to its limit first
 * @param columnOf what the column adds up to; empty without a column
 * @param column the figures that make it
 * @param beside what it rests on, what it lacks, what the row shows, whose the limit is
 * @param accepted what accepts it as it is
 * @param caution what is always to be said with it; empty for nothing
 * @param accept accepts as it is what is outside or not measured and nobody accepted; null where there is none
 * @param wanted what ways can be looked for to; null where there are none
 */
record AnswerLine(
        MeasureKind kind,
        Finding.Group group,
        BenchLines.Stand stand,
        List<BenchLines.Stand> places,
        String columnOf,
        List<FitWords.Line> column,
        List<String> beside,
        List<String> accepted,
        String caution,
        @Nullable Prefilled accept,
        @Nullable Wanted wanted) {
    AnswerLine {
        places = List.copyOf(places);
        column = List.copyOf(column);
        beside = List.copyOf(beside);
        accepted = List.copyOf(accepted);
    }

    /**
     * A figure to find ways to.
     *
     * @param unit of a bare figure
     * @param text what is usually wanted: the limit; empty without one
     */
    record Wanted(String unit, String text) {}
}
