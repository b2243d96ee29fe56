package witnessmark.logbook.run;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;

/**
 * Holds the over-revs counted against the highest speed: one of the two cannot be right when a speed above the design's
 * figure counts none, or some are counted and no speed was above it (common practice, no source: the two may come from
 * different instruments, so it is asked and never stopped). Empty means not read, and says nothing.
 */
final class OverRevs {
    private OverRevs() {}

    /** @param above a speed above this is an over-rev; null when nobody has written it down */
    static void check(@Nullable EngineSpeed above, Map<RunField, Object> values, Map<RunField, FieldReading> out) {
        FieldReading now = out.get(RunField.OVER_REVS);
        if (above == null
                || now == null
                || now.problem() != null
                || !(values.get(RunField.OVER_REVS) instanceof Integer count)
                || !(values.get(RunField.HIGHEST) instanceof EngineSpeed highest)) {
            return;
        }
        boolean over = highest.rpm() > above.rpm();
        if (over && count == 0) {
            ask(out, now, Problem.of(ProblemKind.OVER_REV_NOT_COUNTED, highest, above));
        } else if (!over && count > 0) {
            ask(out, now, Problem.of(ProblemKind.OVER_REV_NOT_REACHED, count, highest, above));
        }
    }

    private static void ask(Map<RunField, FieldReading> out, FieldReading now, Problem problem) {
        out.put(RunField.OVER_REVS, new FieldReading(now.note(), problem, null));
    }
}
