package witnessmark.desktop.engines;

import java.util.List;

/**
 * A figure and every entry behind it, in words.
 *
 * @param title "12.87 h"
 * @param of what it is of: "VS-03, running time since 20 Jan"
 * @param basis what it is made of
 * @param rows every entry
 * @param sum the line under them that adds up
 * @param notCounted how many entries are not counted; empty when none
 */
record BehindLines(String title, String of, String basis, List<BehindLine> rows, String sum, String notCounted) {
    BehindLines {
        rows = List.copyOf(rows);
    }
}
