package witnessmark.ledger;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.ledger.result.Stay;
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

    /** The stay of a fitment in this time, as of a last millisecond; empty when it lies outside. */
    Optional<Stay> stay(Entry<Fitment> fitment, long last) {
        if (from >= to || from > last) {
            return Optional.empty();
        }
        ZoneId zone = fitment.fact().from().zone();
        Moment begun = Moment.of(Instant.ofEpochMilli(from), zone);
        return Optional.of(new Stay(fitment, begun, to > last ? null : Moment.of(Instant.ofEpochMilli(to), zone)));
    }
}
