package witnessmark.ledger;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Table;

/**
 * What differs between a table and a later one made from it: entries as they were and as they are now.
 *
 * @param gone entries that stood and were written again
 * @param come entries new or written again
 */
record Diff<F extends Fact>(List<Entry<F>> gone, List<Entry<F>> come) {
    /** The difference, or null when the later table was not made from the earlier one, entry by entry. */
    static <F extends Fact> @Nullable Diff<F> between(Table<F> earlier, Table<F> later) {
        List<Entry<F>> gone = new ArrayList<>();
        List<Entry<F>> come = new ArrayList<>();
        if (earlier == later) {
            return new Diff<>(gone, come);
        }
        List<Entry<F>> before = earlier.all();
        List<Entry<F>> after = later.all();
        if (after.size() < before.size()) {
            return null;
        }
        for (int i = 0; i < before.size(); i++) {
            if (before.get(i) == after.get(i)) {
                continue;
            }
            if (!before.get(i).id().equals(after.get(i).id())) {
                return null;
            }
            gone.add(before.get(i));
            come.add(after.get(i));
        }
        come.addAll(after.subList(before.size(), after.size()));
        return new Diff<>(gone, come);
    }
}
