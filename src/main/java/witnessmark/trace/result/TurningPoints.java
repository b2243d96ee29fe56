package witnessmark.trace.result;

import java.util.List;

/**
 * Peaks and valleys of a temperature, first and last value among them, for the counting of ranges.
 *
 * @param values in their order, °C
 * @param least ranges smaller than this are left out, °C; larger than asked for where there were too many
 */
public record TurningPoints(List<Double> values, double least) {
    public TurningPoints {
        values = List.copyOf(values);
    }
}
