package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

/**
 * Work done on an engine or a part: a skim, a crack test, a look.
 *
 * @param kind what was done
 * @param at when it was done
 * @param engine on which engine, or null
 * @param part on which part, or null
 * @param result failed work resets nothing
 * @param removed metal taken off, or null
 * @param left thickness left, the least of the corners, or null
 * @param by by whom
 * @param note what was found
 */
public record Work(
        WorkKind kind,
        Moment at,
        @Nullable Id<Engine> engine,
        @Nullable Id<Part> part,
        WorkResult result,
        @Nullable Length removed,
        @Nullable Length left,
        String by,
        String note)
        implements Fact {
    public Work {
        if (engine == null && part == null) {
            throw new IllegalArgumentException("work is done on an engine or a part");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
