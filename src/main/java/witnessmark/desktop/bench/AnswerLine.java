package witnessmark.desktop.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
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
 * @param open the places that are outside or not measured and that nobody accepted, in words; empty when there is none
 */
record AnswerLine(
        MeasureKind kind,
        Group group,
        BenchLines.Stand stand,
        List<BenchLines.Stand> places,
        String columnOf,
        List<FitWords.Line> column,
        List<String> beside,
        List<String> accepted,
        String caution,
        @Nullable OpenCheck open) {
    AnswerLine {
        places = List.copyOf(places);
        column = List.copyOf(column);
        beside = List.copyOf(beside);
        accepted = List.copyOf(accepted);
    }

    /** The list's parts, in their order. */
    enum Group {
        LOOK,
        ACCEPTED,
        INSIDE,
        /** Not measured, and no limit asks for it. */
        UNASKED,
        FREE;

        /** The key of its heading, with the number of answers for {0}. */
        String key() {
            return "bench.group." + name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * What could be accepted as it is.
     *
     * @param number the cylinder or main bearing, or null for all of them or the engine's one
     * @param what in words
     */
    record OpenCheck(@Nullable Integer number, String what) {}
}
