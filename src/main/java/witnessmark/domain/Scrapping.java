package witnessmark.domain;

import witnessmark.quantity.Moment;

/**
 * A part, or a member of a set, taken out of use for good. Its history stays.
 *
 * @param part which part or set
 * @param member which member of the set; empty for the whole
 * @param at when
 * @param why why
 * @param by who decided
 */
public record Scrapping(Id<Part> part, String member, Moment at, String why, String by) implements Fact {

    @Override
    public Moment happened() {
        return at;
    }
}
