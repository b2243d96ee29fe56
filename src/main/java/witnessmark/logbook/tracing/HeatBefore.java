package witnessmark.logbook.tracing;

import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.HeatEnd;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.trace.result.HeatCycles;

/** Whether an engine was cold since its last heat cycle when a run began, by the traces of the runs before it. */
final class HeatBefore {
    private HeatBefore() {}

    /** Cold where no trace before it says otherwise: an engine is cold before its first run. */
    static boolean armed(Facts facts, Entry<Run> run) {
        List<Entry<Trace>> before = facts.of(Trace.class)
                .inForce()
                .filter(trace -> isBefore(facts, trace, run))
                .sorted(Comparator.comparing((Entry<Trace> trace) ->
                                facts.of(Run.class).get(trace.fact().run()).start())
                        .reversed())
                .toList();
        for (Entry<Trace> trace : before) {
            HeatEnd end = trace.fact().heatEnd();
            if (end != null && end != HeatEnd.AS_BEGUN) {
                return end == HeatEnd.COLD;
            }
        }
        return true;
    }

    /** How an engine is left, for whatever comes after. */
    static HeatEnd end(HeatCycles heat) {
        if (heat.armedAfterArmed() == heat.armedAfterNot()) {
            return heat.armedAfterArmed() ? HeatEnd.COLD : HeatEnd.HOT;
        }
        return HeatEnd.AS_BEGUN;
    }

    private static boolean isBefore(Facts facts, Entry<Trace> trace, Entry<Run> run) {
        return facts.of(Run.class)
                .find(trace.fact().run())
                .filter(other -> other.inForce()
                        && other.fact().engine().equals(run.fact().engine())
                        && other.fact().start().isBefore(run.fact().start()))
                .isPresent();
    }
}
