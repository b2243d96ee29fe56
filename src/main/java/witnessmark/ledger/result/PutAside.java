package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.quantity.Moment;

/**
 * A time in which a part was not to be fitted.
 *
 * @param kind why not
 * @param part which part or set
 * @param member the member of the set that was meant; empty for the whole
 * @param from since when
 * @param to when it ended, or null while it lasts
 * @param words what was seen, or whom it is with
 * @param entry what says so
 */
public record PutAside(
        Kind kind,
        Id<Part> part,
        String member,
        Moment from,
        @Nullable Moment to,
        String words,
        Entry<?> entry) {
    /** Why a part is not to be fitted. */
    public enum Kind {
        /** Put aside until somebody decides. */
        QUARANTINE,
        /** With a machinist, a maker, another team. */
        AWAY,
        /** Out of use for good. */
        SCRAPPED
    }

    /** Whether the whole part or set was meant. */
    public boolean whole() {
        return member.isEmpty();
    }

    /** Whether it lasted at a moment. */
    public boolean lasts(Moment at) {
        return !at.isBefore(from) && (to == null || at.isBefore(to));
    }
}
