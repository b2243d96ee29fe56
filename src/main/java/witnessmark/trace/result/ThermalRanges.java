package witnessmark.trace.result;

import java.util.List;
import witnessmark.domain.ChannelKind;

/**
 * Ranges of a temperature over a trace, counted by rainflow. They are shown, and feed no counter.
 *
 * @param kind of which temperature
 * @param least ranges smaller than this were left out, °C
 * @param bands from the smallest ranges to the largest; empty when it never changed by so much
 * @param largest range, °C; 0 when there is none
 */
public record ThermalRanges(ChannelKind kind, double least, List<Band> bands, double largest) {
    /** Width of a band, °C. */
    public static final int WIDTH = 10;

    public ThermalRanges {
        bands = List.copyOf(bands);
    }

    /**
     * @param from °C, a whole multiple of {@link #WIDTH}
     * @param count of ranges from there up to but not with the next band; a half for one that was left open
     */
    public record Band(int from, double count) {}
}
