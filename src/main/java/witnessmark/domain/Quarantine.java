package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A part, or a member of a set, put aside until somebody decides: it may not be fitted meanwhile.
 *
 * @param part which part or set
 * @param member the member of the set that gave the reason; empty for the whole
 * @param from since when
 * @param why what was seen, or what is doubted
 * @param by who put it aside
 * @param to when it was let out, or null while it is aside
 * @param released what was decided then
 * @param releasedBy who decided
 */
public record Quarantine(
        Id<Part> part,
        String member,
        Moment from,
        String why,
        String by,
        @Nullable Moment to,
        String released,
        String releasedBy)
        implements Fact {
    public Quarantine {
        if (to != null && !from.isBefore(to)) {
            throw new IllegalArgumentException("a part comes out of quarantine after it went in");
        }
    }

    @Override
    public Moment happened() {
        return from;
    }
}
