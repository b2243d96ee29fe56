package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A seal on an engine: the builder's or the scrutineer's.
 *
 * @param engine on which engine
 * @param number what is stamped on it
 * @param owner whose seal it is
 * @param from when it was put on
 * @param broken when it was broken or taken off, or null while it is whole
 * @param why why it was broken
 * @param by who put that down
 */
public record Seal(
        Id<Engine> engine,
        String number,
        String owner,
        Moment from,
        @Nullable Moment broken,
        String why,
        String by) implements Fact {
    public Seal {
        if (broken != null && !from.isBefore(broken)) {
            throw new IllegalArgumentException("a seal is broken after it was put on");
        }
    }

    @Override
    public String knownAs() {
        return number;
    }

    @Override
    public Id<?> knownWithin() {
        return engine;
    }

    @Override
    public Moment happened() {
        return from;
    }
}
