package witnessmark.study.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.RunInStep;

/**
 * A dyno sheet worked out.
 *
 * @param sheet the sheet
 * @param run the run it is of
 * @param factor what turned it to a reference day
 * @param pulls in the order of their numbers
 * @param mean of the pulls at each speed; empty when nothing is corrected
 * @param power where mean power is highest, or null without a curve
 * @param torque where mean torque is highest, or null without a curve
 * @param repeats standard deviation of one pull about the mean, a share; null when no speed was reached twice
 * @param change beside the baseline
 * @param steps of running in, in order
 */
public record DynoAnswer(
        Entry<DynoSheet> sheet,
        Entry<Run> run,
        DynoFactor factor,
        List<DynoPull> pulls,
        List<CurvePoint> mean,
        @Nullable CurvePoint power,
        @Nullable CurvePoint torque,
        @Nullable Double repeats,
        DynoChange change,
        List<Entry<RunInStep>> steps) {
    public DynoAnswer {
        pulls = List.copyOf(pulls);
        mean = List.copyOf(mean);
        steps = List.copyOf(steps);
    }
}
