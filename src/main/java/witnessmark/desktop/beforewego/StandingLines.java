package witnessmark.desktop.beforewego;

import java.util.List;
import witnessmark.logbook.standing.FirstSteps;

/**
 * Everything the page shows, in words.
 *
 * @param day beside the title
 * @param board the next event
 * @param over how many parts going are over a recorded limit
 * @param nearest the rows, worst first
 * @param more how many more would be rows if there were room
 * @param quiet how all parts going stand, in one sentence
 * @param elsewhere how the parts that are not going stand; empty when all are going
 * @param all every limit and every fitted part without one, worst first
 * @param lastOut the last run of each car
 * @param moved what the last outing added
 * @param steps how far a new logbook has been begun
 */
public record StandingLines(
        String day,
        Board board,
        int over,
        List<LimitLine> nearest,
        int more,
        String quiet,
        String elsewhere,
        List<LimitLine> all,
        List<OutLine> lastOut,
        List<OutLine> moved,
        FirstSteps steps) {
    public StandingLines {
        nearest = List.copyOf(nearest);
        all = List.copyOf(all);
        lastOut = List.copyOf(lastOut);
        moved = List.copyOf(moved);
    }
}
