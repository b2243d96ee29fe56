package witnessmark.domain;

import witnessmark.quantity.Moment;

/**
 * Somebody who was told of a maker's notice.
 *
 * @param notice which notice
 * @param who who was told
 * @param at when
 * @param how by what means, and what was answered
 * @param by who told
 */
public record NoticeTold(Id<Notice> notice, String who, Moment at, String how, String by) implements Fact {

    @Override
    public Moment happened() {
        return at;
    }
}
