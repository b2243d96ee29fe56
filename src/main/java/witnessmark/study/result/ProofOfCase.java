package witnessmark.study.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * How far it is proven that what was done about an incident holds.
 *
 * @param incident which incident
 * @param state how far
 * @param failed it and the incidents it is again, the earliest first, each with the running before it
 * @param carried what carries the actions, with its running since
 * @param since from when running counts, or null while nothing carries a corrective action
 * @param ran running without the trouble since; none while nothing carries one
 * @param atLeast whether some of that running is not known
 * @param lines what is asked for, in the order it was set
 * @param needed the running asked for, or by the rule of the trade twice the last failed interval (common practice, no source);
 *     null where neither is known
 * @param byRule whether that is by the rule
 * @param together corrective actions that came in at the same time, so that nobody can tell which of them it was
 * @param again the incident by which it came back, or null
 * @param before how it was used before it last failed, or null when nothing carries an action
 * @param now how it has been used since, or null as before
 * @param chance the chance of seeing this anyway had nothing changed, from 0 to 1; NaN where it cannot be told
 * @param forOneInTen running after which that chance is one in ten; null where it cannot be told
 */
public record ProofOfCase(
        Entry<Incident> incident,
        ProofState state,
        List<FailedAfter> failed,
        List<CarriedSince> carried,
        @Nullable Moment since,
        RunningTime ran,
        boolean atLeast,
        List<ProofLine> lines,
        @Nullable RunningTime needed,
        boolean byRule,
        List<Entry<CaseAction>> together,
        @Nullable Entry<Incident> again,
        @Nullable UseOfRuns before,
        @Nullable UseOfRuns now,
        double chance,
        @Nullable RunningTime forOneInTen) {
    public ProofOfCase {
        failed = List.copyOf(failed);
        carried = List.copyOf(carried);
        lines = List.copyOf(lines);
        together = List.copyOf(together);
    }

    /** Whether the running since has reached every age at which it failed before. */
    public boolean reachedItsAge() {
        return !failed.isEmpty() && failed.stream().allMatch(each -> ran.compareTo(each.ran()) >= 0);
    }

    /** Whether the running asked for is there. */
    public boolean ranEnough() {
        return needed != null && ran.compareTo(needed) >= 0;
    }

    /** Whether everything asked for is there, at least one look or reading among it. A person closes it all the same. */
    public boolean allThere() {
        return state == ProofState.HOLDING
                && ranEnough()
                && !lines.isEmpty()
                && lines.stream().allMatch(line -> line.state() == ProofLine.State.MET);
    }
}
