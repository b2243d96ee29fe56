package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.quantity.Moment;

/**
 * Times that entries take up, each from its first moment up to, not including, its last; sorted. Answers who overlaps
 * whom without comparing everyone with everyone.
 */
final class Spans<F extends Fact> {
    private final List<Entry<F>> entries;
    private final long[] from;
    private final long[] to;

    /** The place, at or before each, of the entry that lasts longest. */
    private final int[] longest;

    /** Times that take up nothing are left out. */
    Spans(List<Entry<F>> all, ToLongFunction<F> from, ToLongFunction<F> to) {
        this.entries = new ArrayList<>(all.size());
        for (Entry<F> entry : all) {
            if (from.applyAsLong(entry.fact()) < to.applyAsLong(entry.fact())) {
                entries.add(entry);
            }
        }
        entries.sort(Comparator.<Entry<F>>comparingLong(entry -> from.applyAsLong(entry.fact()))
                .thenComparing(Entry::id));
        this.from = new long[entries.size()];
        this.to = new long[entries.size()];
        this.longest = new int[entries.size()];
        for (int i = 0; i < entries.size(); i++) {
            this.from[i] = from.applyAsLong(entries.get(i).fact());
            this.to[i] = to.applyAsLong(entries.get(i).fact());
            this.longest[i] = i > 0 && this.to[longest[i - 1]] >= this.to[i] ? longest[i - 1] : i;
        }
    }

    /** The millisecond after the last of a time that may still be going on. */
    static long end(@Nullable Moment to) {
        return to == null ? Long.MAX_VALUE : to.epochMillis();
    }

    /** The later of two moments: where two times that overlap begin to. */
    static Moment later(Moment one, Moment other) {
        return one.isBefore(other) ? other : one;
    }

    /**
     * Names for each changed entry one other that overlaps it, if any does. Of two changed entries that overlap the
     * later one is named.
     */
    void eachOverlap(Predicate<Entry<F>> changed, BiConsumer<Entry<F>, Entry<F>> overlap) {
        int nextUnchanged = entries.size();
        int[] unchangedAfter = new int[entries.size()];
        for (int i = entries.size() - 1; i >= 0; i--) {
            unchangedAfter[i] = nextUnchanged;
            nextUnchanged = changed.test(entries.get(i)) ? nextUnchanged : i;
        }
        for (int i = 0; i < entries.size(); i++) {
            if (!changed.test(entries.get(i))) {
                continue;
            }
            int after = unchangedAfter[i];
            if (i > 0 && to[longest[i - 1]] > from[i]) {
                overlap.accept(entries.get(i), entries.get(longest[i - 1]));
            } else if (after < entries.size() && from[after] < to[i]) {
                overlap.accept(entries.get(i), entries.get(after));
            }
        }
    }

    /** Whether some time includes this moment. */
    boolean covers(long moment) {
        int before = startedBy(moment);
        return before > 0 && to[longest[before - 1]] > moment;
    }

    /** An entry within whose time this moment falls, its first moment aside; or null. */
    @Nullable
    Entry<F> inside(long moment) {
        int before = startedBy(moment - 1);
        return before > 0 && to[longest[before - 1]] > moment ? entries.get(longest[before - 1]) : null;
    }

    private int startedBy(long moment) {
        int low = 0;
        int high = from.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (from[middle] <= moment) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
