package witnessmark.logbook.proof;

import java.util.List;
import java.util.Map;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.study.result.ProofOfCase;

/**
 * The investigation of an incident as of a day.
 *
 * @param findings in the order they were seen
 * @param calls what was made of each cause, the latest first; a cause nobody called is not in it
 * @param tests of its causes, those to be done first
 * @param actions those to be done first, then by the day they were done
 * @param proof how far it is proven that they hold
 */
public record CaseSeen(
        List<Entry<Finding>> findings,
        Map<Id<Cause>, List<CauseCall>> calls,
        List<Entry<CauseTest>> tests,
        List<Entry<CaseAction>> actions,
        ProofOfCase proof) {
    public CaseSeen {
        findings = List.copyOf(findings);
        calls = Map.copyOf(calls);
        tests = List.copyOf(tests);
        actions = List.copyOf(actions);
    }
}
