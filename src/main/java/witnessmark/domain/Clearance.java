package witnessmark.domain;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A signed answer to a hold. It never takes the event out of the history.
 *
 * @param hold the hold it clears, or null
 * @param run the run that raised it, or null
 * @param reading the reading that raised it, or null
 * @param trigger the rule by which a run or reading raised it; null with a hold
 * @param part this part only, or null for all it held
 * @param at when it was signed
 * @param done what was looked at and done
 * @param result what was found
 * @param by who signed
 * @param words anything the signer adds
 */
public record Clearance(
        @Nullable Id<Hold> hold,
        @Nullable Id<Run> run,
        @Nullable Id<Reading> reading,
        @Nullable Id<Trigger> trigger,
        @Nullable Id<Part> part,
        Moment at,
        String done,
        String result,
        String by,
        String words)
        implements Fact {
    public Clearance {
        if (Stream.of(hold, run, reading).filter(cause -> cause != null).count() != 1
                || (hold == null) != (trigger != null)) {
            throw new IllegalArgumentException("a clearance answers one hold, or one run or reading under one rule");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
