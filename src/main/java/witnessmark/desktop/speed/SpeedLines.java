package witnessmark.desktop.speed;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.desktop.form.SeamState;
import witnessmark.wording.FitWords;

/**
 * The fit at speed in words.
 *
 * @param state the mark, or null where nothing is set to hold it against
 * @param word the word of the mark
 * @param headline the answer in one line
 * @param beside what is wanted, what closes most, what would put it right
 * @param column how the nearest side comes about
 * @param rings whether a ring is met
 * @param conditions how warm and of what it is taken to be
 * @param missing what is not known or taken as usual
 * @param loads what the rod bolts hold
 * @param marks what the marks at the crowns fit; empty where too few are read
 * @param tried what the rest becomes with what is tried; empty while nothing is
 * @param chart crown to head over speed; empty where it is not known
 */
record SpeedLines(
        @Nullable SeamState state,
        String word,
        String headline,
        List<String> beside,
        List<FitWords.Line> column,
        List<String> rings,
        String conditions,
        List<String> missing,
        List<String> loads,
        List<String> marks,
        List<String> tried,
        Optional<Chart> chart) {
    SpeedLines {
        beside = List.copyOf(beside);
        column = List.copyOf(column);
        rings = List.copyOf(rings);
        missing = List.copyOf(missing);
        loads = List.copyOf(loads);
        marks = List.copyOf(marks);
        tried = List.copyOf(tried);
    }
}
