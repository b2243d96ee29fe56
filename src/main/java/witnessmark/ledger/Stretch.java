package witnessmark.ledger;

import witnessmark.domain.Fitment;
import witnessmark.quantity.Moment;

/**
 * The time in which a fitment charges a part.
 *
 * @param from first millisecond
 * @param to the millisecond after the last; not after from when it charges nothing
 */
record Stretch(long from, long to) {
    /** The part of a fitment that lies within a tenure, from a moment on. */
    static Stretch of(Tenure tenure, Fitment fitment, long since) {
        Moment end = fitment.to();
        return new Stretch(
                Math.max(Math.max(tenure.from(), fitment.from().epochMillis()), since),
                Math.min(tenure.to(), end == null ? Long.MAX_VALUE : end.epochMillis()));
    }
}
