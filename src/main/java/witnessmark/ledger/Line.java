package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * What one engine or one car ran, in the order it went out, with running totals of every counter. Told running stands
 * where it begins. Runs that are perhaps the same as another stand aside: they are in no total.
 */
final class Line {
    static final Line EMPTY = of(List.of(), List.of());

    /** By start, then by id, so that the order of writing never shows. */
    private static final Comparator<Entry<?>> ORDER = Comparator.<Entry<?>>comparingLong(Line::start)
            .thenComparing(entry -> entry.id().value());

    private final List<Entry<?>> counting;
    private final long[] starts;
    private final List<Entry<Run>> aside;

    /** Filled in as counters are asked for; whoever comes first, the totals are the same. */
    private final @Nullable Totals[] totals = new Totals[Counter.values().length];

    private Line(List<Entry<?>> counting, List<Entry<Run>> aside) {
        this.counting = counting;
        this.aside = aside;
        this.starts = new long[counting.size()];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = start(counting.get(i));
        }
    }

    /** The line of these runs and told stretches, all in force and by the day. */
    static Line of(List<Entry<Run>> runs, List<Entry<ToldRunning>> told) {
        List<Entry<?>> counting = new ArrayList<>(runs.size() + told.size());
        List<Entry<Run>> aside = new ArrayList<>();
        for (Entry<Run> run : runs) {
            if (run.fact().perhapsSame() == null) {
                counting.add(run);
            } else {
                aside.add(run);
            }
        }
        counting.addAll(told);
        counting.sort(ORDER);
        aside.sort(ORDER);
        return new Line(counting, aside);
    }

    /** Whether anything ran, what stands aside included. */
    boolean any() {
        return !counting.isEmpty() || !aside.isEmpty();
    }

    /** Adds what went out from one moment up to, not including, another. */
    void charge(Tally tally, long from, long to) {
        int first = place(from);
        int end = place(to);
        if (first < end) {
            totals(tally.counter).charge(tally, first, end);
        }
    }

    /** The runs and told stretches that went out from one moment up to, not including, another. */
    List<Entry<?>> counting(long from, long to) {
        int first = place(from);
        return counting.subList(first, Math.max(first, place(to)));
    }

    /** The runs that stand aside within the same stretch. */
    List<Entry<Run>> aside(long from, long to) {
        return aside.stream()
                .filter(run -> from <= start(run) && start(run) < to)
                .toList();
    }

    private Totals totals(Counter counter) {
        Totals known = totals[counter.ordinal()];
        if (known == null) {
            known = new Totals(counting, counter);
            totals[counter.ordinal()] = known;
        }
        return known;
    }

    /** How many went out before this moment. */
    private int place(long millis) {
        int low = 0;
        int high = starts.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (starts[middle] < millis) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    static void add(Tally tally, Fact fact) {
        if (fact instanceof Run run) {
            tally.add(run);
        } else if (fact instanceof ToldRunning told) {
            tally.add(told);
        } else {
            throw new IllegalArgumentException("a line holds runs and told running, not " + fact);
        }
    }

    /** When a run went out, or a told stretch began. */
    static Moment happened(Entry<?> entry) {
        Moment happened = entry.fact().happened();
        if (happened == null) {
            throw new IllegalArgumentException("what ran has a moment: " + entry);
        }
        return happened;
    }

    private static long start(Entry<?> entry) {
        return happened(entry).epochMillis();
    }
}
