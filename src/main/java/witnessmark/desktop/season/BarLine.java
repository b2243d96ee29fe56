package witnessmark.desktop.season;

import java.util.List;
import witnessmark.chart.StackedBar;

/**
 * One bar of what it went on.
 *
 * @param id what makes it the same bar as before
 * @param name what it stands for
 * @param bar drawn beside it
 * @param said what it is put together of, in words
 * @param amount all of it
 * @param share of all failures
 * @param running the share of this bar and all above it
 * @param perHour what that is for each hour run; empty where nothing of it runs
 * @param lines what it opens to
 */
record BarLine(
        String id,
        String name,
        StackedBar bar,
        String said,
        Amount amount,
        String share,
        String running,
        String perHour,
        List<CostRow> lines) {
    BarLine {
        lines = List.copyOf(lines);
    }

    Behind behind() {
        return new Behind(name, amount, lines);
    }
}
