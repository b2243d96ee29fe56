package witnessmark.logbook.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CaseAction;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.quantity.Moment;
import witnessmark.study.result.ProofOfCase;

/**
 * The investigation of an incident as of a day.
 *
 * @param evidence what was found, held against the causes
 * @param tests of its causes, those to be done first
 * @param actions those to be done first, then by the day they were done
 * @param proof how far it is proven that they hold
 * @param until the last moment that counts
 */
public record CaseSeen(
        Evidence evidence,
        List<Entry<CauseTest>> tests,
        List<Entry<CaseAction>> actions,
        ProofOfCase proof,
        Moment until) {
    public CaseSeen {
        tests = List.copyOf(tests);
        actions = List.copyOf(actions);
    }

    /** That moment where it is known by then; null where it lies later, or there is none. */
    public @Nullable Moment known(@Nullable Moment at) {
        return at == null || at.isAfter(until) ? null : at;
    }
}
