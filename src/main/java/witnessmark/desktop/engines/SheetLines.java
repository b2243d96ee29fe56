package witnessmark.desktop.engines;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;

/**
 * One engine in words.
 *
 * @param engine the text form of its identity
 * @param number as stamped
 * @param where the car it is in and since when, or that it is open
 * @param sinceRebuild "12.87 h since rebuild, 28 Jan"
 * @param sinceSkim "HD-03: 12.87 h since its skim, 20 Jan"; null when no head is fitted
 * @param design what it is built to, and whose it is when not the team's
 * @param state the mark
 * @param worst the state's word and what stands worst
 * @param asks which needed positions are empty, and which builds are not proven; empty when none is
 * @param build every position
 * @param lives one row for each counter
 */
record SheetLines(
        String engine,
        String number,
        String where,
        Shown sinceRebuild,
        @Nullable Shown sinceSkim,
        String design,
        SeamState state,
        String worst,
        String asks,
        List<BuildLine> build,
        List<CounterLine> lives) {
    SheetLines {
        build = List.copyOf(build);
        lives = List.copyOf(lives);
    }
}
