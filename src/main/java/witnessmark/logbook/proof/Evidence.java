package witnessmark.logbook.proof;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseState;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Weighing;

/**
 * What was found, held against the causes an incident may have had.
 *
 * @param findings in the order they were seen
 * @param causes what is blamed first, what is ruled out last
 * @param calls what was made of each cause, the latest first; a cause nobody called is not in it
 * @param weighed how a finding speaks to a cause, as last written
 */
public record Evidence(
        List<Entry<Finding>> findings,
        List<Entry<Cause>> causes,
        Map<Id<Cause>, List<CauseCall>> calls,
        Map<Pair, Entry<Weighing>> weighed) {
    /** A finding and a cause. */
    public record Pair(Id<Finding> finding, Id<Cause> cause) {}

    public Evidence {
        findings = List.copyOf(findings);
        causes = List.copyOf(causes);
        calls = Map.copyOf(calls);
        weighed = Map.copyOf(weighed);
    }

    /** How a finding speaks to a cause; empty where nobody has said. */
    public Optional<Entry<Weighing>> of(Id<Finding> finding, Id<Cause> cause) {
        return Optional.ofNullable(weighed.get(new Pair(finding, cause)));
    }

    /** What is made of a cause now; null while nobody has called it. */
    public @Nullable CauseCall call(Id<Cause> cause) {
        List<CauseCall> all = calls.getOrDefault(cause, List.of());
        return all.isEmpty() ? null : all.get(0);
    }

    /** How a cause stands; open while nobody has called it. */
    public CauseState state(Id<Cause> cause) {
        CauseCall call = call(cause);
        return call == null ? CauseState.OPEN : call.state();
    }
}
