package witnessmark.domain;

import witnessmark.quantity.Moment;

/**
 * What a maker's notice asked for, done on one part.
 *
 * @param notice which notice
 * @param part on which part
 * @param at when
 * @param done what was done and what it showed
 * @param by who signed
 */
public record NoticeDone(Id<Notice> notice, Id<Part> part, Moment at, String done, String by) implements Fact {

    @Override
    public Moment happened() {
        return at;
    }
}
