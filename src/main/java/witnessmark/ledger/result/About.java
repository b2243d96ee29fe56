package witnessmark.ledger.result;

import witnessmark.domain.Run;
import witnessmark.domain.StartKnown;
import witnessmark.quantity.Moment;

/**
 * A moment that nobody stated, as a fact of a problem: it is said with its word, never as if it were known.
 *
 * @param at the moment it was put at
 */
public record About(Moment at) {
    /** When a run went out: the moment, or about then where nobody stated it. */
    public static Object start(Run run) {
        return isEstimate(run) ? new About(run.start()) : run.start();
    }

    /** When a run came back, likewise. */
    public static Object back(Run run) {
        return isEstimate(run) && run.in() == null ? new About(run.back()) : run.back();
    }

    private static boolean isEstimate(Run run) {
        return run.startKnown() == StartKnown.ESTIMATE;
    }
}
