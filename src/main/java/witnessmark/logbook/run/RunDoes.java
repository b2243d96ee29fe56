package witnessmark.logbook.run;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LifeChange;

/**
 * What the run on the sheet would do.
 *
 * @param engine the number of the engine that takes it
 * @param before its running time since the bottom end was last rebuilt, without the run
 * @param after the same with the run
 * @param asWritten the same with the run as it is written now, null for one that is not written
 * @param counted every counter of the engine that changes, running time among them
 * @param limits every limit whose use changes, worst first
 * @param withoutLimit how many of the parts it is charged to have no limit at all
 */
public record RunDoes(
        String engine,
        Life before,
        Life after,
        @Nullable Life asWritten,
        List<LifeChange> counted,
        List<LimitEffect> limits,
        int withoutLimit) {
    public RunDoes {
        counted = List.copyOf(counted);
        limits = List.copyOf(limits);
    }
}
