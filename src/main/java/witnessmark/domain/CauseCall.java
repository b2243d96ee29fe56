package witnessmark.domain;

import witnessmark.quantity.Moment;

/**
 * What somebody made of a cause on a day. A later call stands; the earlier ones stay to be seen.
 *
 * @param cause of which cause
 * @param at when
 * @param state what it was held to be from then on
 * @param sure how sure that was
 * @param because on what grounds
 * @param by by whom
 */
public record CauseCall(Id<Cause> cause, Moment at, CauseState state, HowSure sure, String because, String by)
        implements Fact {
    @Override
    public Moment happened() {
        return at;
    }
}
