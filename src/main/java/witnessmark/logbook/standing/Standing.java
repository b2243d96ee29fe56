package witnessmark.logbook.standing;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.PlannedRun;

/**
 * How the team stands on a day, from what is written down, and what is to come by the timetables and the team's own
 * record.
 *
 * @param day the day it is seen as of
 * @param next the event that runs or comes next, or null when none is written down
 * @param timetable the runs of that event that are to come for any of the cars, in order
 * @param cars the names of the cars going
 * @param going marks of the cars and engines going to it, worst first; of every engine in a car when nothing is entered
 * @param elsewhere marks of all other engines and cars, worst first
 * @param withoutLimit every fitted part without a recorded limit, those going first
 * @param enginesWithoutLimit the engines going that nothing at all is recorded for, by their numbers
 * @param goingParts how the parts going stand, counted
 * @param elsewhereParts how all other fitted parts stand, counted
 * @param lastOut the last run of each car that ran, the latest first
 * @param moved what the last outing added to each engine that was on it
 * @param nextRuns the next run of each car while the event runs; empty when it does not
 * @param open jobs, what is with others, what the shelf lacks, makers' notices
 * @param steps how far the logbook has been begun
 */
public record Standing(
        LocalDate day,
        @Nullable NextEvent next,
        List<Entry<PlannedRun>> timetable,
        List<String> cars,
        List<MarkOn> going,
        List<MarkOn> elsewhere,
        List<PartWithoutLimit> withoutLimit,
        List<EngineWithoutLimit> enginesWithoutLimit,
        PartCount goingParts,
        PartCount elsewhereParts,
        List<LastOut> lastOut,
        List<LifeMoved> moved,
        List<NextRun> nextRuns,
        StillOpen open,
        FirstSteps steps) {
    public Standing {
        timetable = List.copyOf(timetable);
        cars = List.copyOf(cars);
        going = List.copyOf(going);
        elsewhere = List.copyOf(elsewhere);
        withoutLimit = List.copyOf(withoutLimit);
        enginesWithoutLimit = List.copyOf(enginesWithoutLimit);
        lastOut = List.copyOf(lastOut);
        moved = List.copyOf(moved);
        nextRuns = List.copyOf(nextRuns);
    }

    /** The parts going that have no recorded limit. */
    public List<PartWithoutLimit> goingWithoutLimit() {
        return withoutLimit.subList(0, Math.min(goingParts.noLimit(), withoutLimit.size()));
    }

    /** How many marks, cars without an engine and engines not complete ask for something before the team goes. */
    public int calling() {
        int marks = (int) going.stream().filter(MarkOn::calls).count();
        return marks + open.bare().size() + open.incomplete().size();
    }
}
