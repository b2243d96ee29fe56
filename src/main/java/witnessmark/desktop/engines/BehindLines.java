package witnessmark.desktop.engines;

import java.util.List;
import java.util.function.Function;

/**
 * A figure and every entry behind it, in words.
 *
 * @param title "12.87 h"
 * @param of what it is of: "VS-03, running time since 20 Jan"
 * @param basis what it is made of
 * @param rows every entry
 * @param sum adds up the entries shown, all of them or a part
 * @param notCounted how many entries are not counted; empty when none
 */
record BehindLines(
        String title,
        String of,
        String basis,
        List<BehindLine> rows,
        Function<List<BehindLine>, Sum> sum,
        String notCounted) {
    /**
     * What stands under the entries.
     *
     * @param entries how many count, and of how many when not all are shown
     * @param adds what they add up to
     */
    record Sum(String entries, String adds) {}

    BehindLines {
        rows = List.copyOf(rows);
    }
}
