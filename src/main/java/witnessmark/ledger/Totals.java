package witnessmark.ledger;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.quantity.Counter;

/**
 * Running totals of one counter along a {@link Line}: place {@code i} of a column is the sum over the first {@code i}
 * entries, so that any stretch is two look-ups. A column that is zero all along is not kept.
 */
final class Totals {
    private static final long[] ZERO = {};
    private static final int KNOWN = 0;
    private static final int LOWEST = 1;
    private static final int LIKELY = 2;
    private static final int HIGHEST = 3;
    private static final int ESTIMATED = 4;
    private static final int NOT_READ = 5;

    private final long[][] columns;

    Totals(List<Entry<?>> entries, Counter counter) {
        columns = new long[NOT_READ + 1][entries.size() + 1];
        Tally tally = new Tally(counter);
        for (int i = 1; i <= entries.size(); i++) {
            Line.add(tally, entries.get(i - 1).fact());
            columns[KNOWN][i] = tally.known;
            columns[LOWEST][i] = tally.toldLowest;
            columns[LIKELY][i] = tally.told;
            columns[HIGHEST][i] = tally.toldHighest;
            columns[ESTIMATED][i] = tally.estimated;
            columns[NOT_READ][i] = tally.runsNotRead;
        }
        for (int column = 0; column < columns.length; column++) {
            if (columns[column][entries.size()] == 0) {
                columns[column] = ZERO;
            }
        }
    }

    /** Adds the entries from one place up to, not including, another. */
    void charge(Tally tally, int from, int to) {
        tally.addKnown(between(KNOWN, from, to));
        tally.addTold(between(LOWEST, from, to), between(LIKELY, from, to), between(HIGHEST, from, to));
        tally.addEstimated(between(ESTIMATED, from, to));
        tally.addRuns(to - from, (int) between(NOT_READ, from, to));
    }

    private long between(int column, int from, int to) {
        long[] sums = columns[column];
        return sums.length == 0 ? 0 : sums[to] - sums[from];
    }
}
