package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A look or a reading that was asked for as proof, made.
 *
 * @param wanted which proof
 * @param at when
 * @param engine on which engine, or null when the part was off
 * @param part on which part, or null
 * @param met whether it was as asked for
 * @param reading the reading that says it, or null
 * @param finding the finding that says it, or null
 * @param words what was seen
 * @param by by whom
 */
public record ProofSeen(
        Id<ProofWanted> wanted,
        Moment at,
        @Nullable Id<Engine> engine,
        @Nullable Id<Part> part,
        boolean met,
        @Nullable Id<Reading> reading,
        @Nullable Id<Finding> finding,
        String words,
        String by)
        implements Fact {
    public ProofSeen {
        if (words.isBlank() && reading == null && finding == null) {
            throw new IllegalArgumentException("proof says what was seen");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
