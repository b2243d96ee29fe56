package witnessmark.ledger;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * Where the count of a life begins: with a life carried in, or with nothing. Of several lives carried in for one
 * counter the one stated last holds. What was carried in with a life by another counter but says nothing of this one
 * has run an unknown amount; so has what is first written of after the day looked at.
 *
 * @param prior the life carried in, or null
 * @param unstated up to when nobody can say what was run: a life was carried in then that says nothing of this counter,
 *     or it is the first entry; null when none, or when prior is there
 */
record Origin(@Nullable Entry<PriorLife> prior, @Nullable Moment unstated) {
    /** The start of everything: no moment lies before it. */
    static final long EVER = Long.MIN_VALUE;

    /** The origin by one counter, from lives carried in sorted by the moment they are stated at. */
    static Origin of(List<Entry<PriorLife>> stated, Counter counter) {
        Entry<PriorLife> prior = null;
        Moment other = null;
        for (Entry<PriorLife> entry : stated) {
            PriorLife fact = entry.fact();
            if (fact.counter() == counter) {
                prior = entry;
            } else if (fact.kind() != PriorKind.KNOWN || fact.amount() > 0) {
                other = other == null || fact.at().isAfter(other) ? fact.at() : other;
            }
        }
        return new Origin(prior, prior == null ? other : null);
    }

    /** The same, when a later moment is the first that says something; a life carried in by the day says enough. */
    Origin notKnownUntil(@Nullable Moment later) {
        boolean says = later != null && prior == null && (unstated == null || unstated.isBefore(later));
        return says ? new Origin(null, later) : this;
    }

    /** The first millisecond whose runs are added to the life carried in. */
    long from() {
        return prior == null ? EVER : prior.fact().at().epochMillis();
    }

    /** Adds the life carried in to a life counted since a moment; nothing when it was all run by then. */
    void charge(Tally tally, long since) {
        if (prior != null && adds(since)) {
            if (since == EVER) {
                tally.add(prior.fact());
            } else {
                tally.addPerhaps(prior.fact());
            }
        }
        tally.atLeast |= unstated != null && unstated.epochMillis() > since;
    }

    /** Whether any of the life carried in may have been run since a moment. */
    boolean adds(long since) {
        return from() > since;
    }
}
