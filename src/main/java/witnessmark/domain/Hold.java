package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * An engine or a part held by a person: a detonation mark, a hydraulic lock, something nobody can explain. What a
 * {@link Trigger} holds is worked out, not written down.
 *
 * @param engine the engine with all that is in it, or null when only a part
 * @param part the part, or null when the engine
 * @param member the member of the set that gave the reason; empty for the whole
 * @param at since when
 * @param why what was seen
 * @param asks what is to be looked at before it may be cleared
 * @param by who held it
 */
public record Hold(
        @Nullable Id<Engine> engine,
        @Nullable Id<Part> part,
        String member,
        Moment at,
        String why,
        String asks,
        String by)
        implements Fact {
    public Hold {
        if ((engine == null) == (part == null)) {
            throw new IllegalArgumentException("an engine is held, or a part");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
