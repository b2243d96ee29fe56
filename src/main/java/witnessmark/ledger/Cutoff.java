package witnessmark.ledger;

import witnessmark.domain.Entry;
import witnessmark.quantity.Moment;

/**
 * Which entries count at all: those in force that happened by the last moment.
 *
 * @param last milliseconds since 1970-01-01T00:00Z, the last that counts
 */
record Cutoff(long last) {
    /** Everything in force, the future included. */
    static final Cutoff NEVER = new Cutoff(Long.MAX_VALUE);

    boolean counts(Entry<?> entry) {
        if (!entry.inForce()) {
            return false;
        }
        Moment happened = entry.fact().happened();
        return happened == null || happened.epochMillis() <= last;
    }

    /** Whether an entry is in force and happened after the last moment that counts. */
    boolean isBefore(Entry<?> entry) {
        return entry.inForce() && !counts(entry);
    }
}
