package witnessmark.desktop.beforewego;

import java.util.List;
import witnessmark.logbook.standing.FirstSteps;

/**
 * Everything the page shows, in words.
 *
 * @param day beside the title
 * @param board the next event
 * @param nextRuns what is to be looked at before the next run of each car; empty when no event runs
 * @param calling how many marks, cars without an engine and engines not complete ask for something before the team goes
 * @param must those, worst first, as far as there is room
 * @param due what comes due while the team is there
 * @param nearest what stands nearest to its limit after these, when these are few
 * @param more how many more would be rows if there were room
 * @param runsOut where it runs out, run by run
 * @param quiet how all parts going stand, in one sentence
 * @param elsewhere how the parts that are not going stand; empty when all are going
 * @param all every limit and every fitted part without one, worst first
 * @param lastOut the last run of each car
 * @param moved what the last outing added
 * @param bare cars entered that have no engine in them
 * @param unlogged past runs that nobody logged
 * @param incomplete engines going with nothing in a needed position
 * @param jobs work planned and not done
 * @param out what is with others
 * @param incidents incidents of what goes that are not closed
 * @param readings readings to be looked at before any limit is passed
 * @param refunds what can be asked back
 * @param borrowed what is to go back
 * @param others what the shelf lacks, and makers' notices
 * @param steps how far a new logbook has been begun
 */
public record StandingLines(
        String day,
        Board board,
        List<NextRunLines> nextRuns,
        int calling,
        List<MarkLine> must,
        List<MarkLine> due,
        List<MarkLine> nearest,
        int more,
        RunsOutLines runsOut,
        String quiet,
        String elsewhere,
        List<MarkLine> all,
        List<OutLine> lastOut,
        List<OutLine> moved,
        List<OutLine> bare,
        List<OutLine> unlogged,
        List<OutLine> incomplete,
        List<OutLine> jobs,
        List<OutLine> out,
        List<OutLine> incidents,
        List<OutLine> readings,
        List<OutLine> refunds,
        List<OutLine> borrowed,
        List<OutLine> others,
        FirstSteps steps) {
    public StandingLines {
        nextRuns = List.copyOf(nextRuns);
        must = List.copyOf(must);
        due = List.copyOf(due);
        nearest = List.copyOf(nearest);
        all = List.copyOf(all);
        lastOut = List.copyOf(lastOut);
        moved = List.copyOf(moved);
        bare = List.copyOf(bare);
        unlogged = List.copyOf(unlogged);
        incomplete = List.copyOf(incomplete);
        jobs = List.copyOf(jobs);
        out = List.copyOf(out);
        incidents = List.copyOf(incidents);
        readings = List.copyOf(readings);
        refunds = List.copyOf(refunds);
        borrowed = List.copyOf(borrowed);
        others = List.copyOf(others);
    }
}
