package witnessmark.chart;

import org.jspecify.annotations.Nullable;

/**
 * One point of a line.
 *
 * @param across where on the bottom axis
 * @param up how high, or null where the line has a gap because nothing is known
 * @param words the readout: "Race 2, Sun 5 Jul: 12.87 h"
 * @param record the record it stands for, for opening it; null when none
 */
public record Dot(
        double across,
        @Nullable Double up,
        String words,
        @Nullable String record) {
    /** How high; not a number in a gap. */
    double height() {
        return up == null ? Double.NaN : up;
    }
}
