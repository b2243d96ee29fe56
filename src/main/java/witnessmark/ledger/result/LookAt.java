package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Look;

/**
 * One thing to look at before the next run of a car.
 *
 * @param reason why it is asked for
 * @param what what is looked at, as a look names it: words, a part's mark, an engine's number, what was told
 * @param engine the number of the engine it was told of, where another is in the car by now; null where it is not
 * @param word the word of a closed list that it is or is of, or null
 * @param done the look that ticks it, written since the run before; null when nobody has looked
 */
public record LookAt(
        Reason reason,
        String what,
        @Nullable String engine,
        @Nullable Coded word,
        @Nullable Entry<Look> done) {
    /** Why something is looked at. */
    public enum Reason {
        /** It is before every run. */
        USUAL,
        /** The engine went in since. */
        ENGINE_WENT_IN,
        /** The part went in since. */
        WENT_IN,
        /** It was told after the last run. */
        TOLD
    }
}
