package witnessmark.ledger;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;

/** When the runs of one engine or car that count went out; finds the first within a stretch. */
final class RunStarts {
    private final List<Entry<Run>> runs;
    private final int[] nextChanged;

    /** The starts of runs sorted by when they went out. */
    RunStarts(List<Entry<Run>> sorted, Predicate<Entry<?>> changed) {
        this.runs =
                sorted.stream().filter(run -> run.fact().perhapsSame() == null).toList();
        this.nextChanged = new int[runs.size() + 1];
        nextChanged[runs.size()] = runs.size();
        for (int i = runs.size() - 1; i >= 0; i--) {
            nextChanged[i] = changed.test(runs.get(i)) ? i : nextChanged[i + 1];
        }
    }

    /** The first run that went out from one moment up to, not including, another; or null. */
    @Nullable
    Entry<Run> first(long from, long to, boolean changedOnly) {
        int place = place(from);
        int found = changedOnly ? nextChanged[place] : place;
        return found < runs.size() && start(found) < to ? runs.get(found) : null;
    }

    private int place(long from) {
        int low = 0;
        int high = runs.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (start(middle) < from) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private long start(int place) {
        return runs.get(place).fact().start().epochMillis();
    }
}
