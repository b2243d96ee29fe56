package witnessmark.logbook.standing;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the team stands on a day, from what is written down and nothing else. Limits are taken as recorded; no rule adds
 * running that has not been run.
 *
 * @param day the day it is seen as of
 * @param next the event that runs or comes next, or null when none is written down
 * @param going limits on the cars and engines going to it, worst first; on every engine in a car when nothing is entered
 * @param elsewhere limits on all other engines and cars, worst first
 * @param withoutLimit every fitted part without a recorded limit, those going first
 * @param goingParts how the parts going stand, counted
 * @param elsewhereParts how all other fitted parts stand, counted
 * @param lastOut the last run of each car that ran, the latest first
 * @param moved what the last outing added to each engine that was on it
 * @param steps how far the logbook has been begun
 */
public record Standing(
        LocalDate day,
        @Nullable NextEvent next,
        List<LimitOn> going,
        List<LimitOn> elsewhere,
        List<PartWithoutLimit> withoutLimit,
        PartCount goingParts,
        PartCount elsewhereParts,
        List<LastOut> lastOut,
        List<LifeMoved> moved,
        FirstSteps steps) {
    public Standing {
        going = List.copyOf(going);
        elsewhere = List.copyOf(elsewhere);
        withoutLimit = List.copyOf(withoutLimit);
        lastOut = List.copyOf(lastOut);
        moved = List.copyOf(moved);
    }
}
