package witnessmark.logbook.tracing;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import witnessmark.domain.Entry;
import witnessmark.domain.OverRev;
import witnessmark.domain.Run;
import witnessmark.outcome.Problem;

/**
 * What a trace would change of a run. A person takes what he believes.
 *
 * @param trace as it was read
 * @param part which part of it, from 0
 * @param run of which run
 * @param figures what the trace says, in the types of the run
 * @param taken what would be taken as it stands: what the run does not say, or says less well
 * @param overRevs to be written down, those that stand there already left out
 * @param problems what keeps it from being taken, and what is to be known first
 */
public record TraceProposal(
        BroughtTrace trace,
        int part,
        Entry<Run> run,
        Map<TraceField, Object> figures,
        Set<TraceField> taken,
        List<OverRev> overRevs,
        List<Problem> problems) {
    public TraceProposal {
        figures = Map.copyOf(new TreeMap<>(figures));
        taken = Set.copyOf(taken);
        overRevs = List.copyOf(overRevs);
        problems = List.copyOf(problems);
    }

    /** Whether nothing of it can be written. */
    public boolean stops() {
        return problems.stream().anyMatch(Problem::stops);
    }
}
