package witnessmark.trace.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import witnessmark.domain.ChannelKind;
import witnessmark.mechanics.Rainflow;
import witnessmark.trace.result.ThermalRanges;

/** Ranges of a temperature by rainflow ({@link Rainflow}, ASTM E1049). */
public final class Temperatures {
    private Temperatures() {}

    /**
     * @param values in their order; NaN is left out
     * @param least smaller ranges are left out, °C
     */
    public static ThermalRanges ranges(ChannelKind kind, double[] values, double least) {
        Map<Integer, Double> counts = new TreeMap<>();
        double[] largest = {0};
        Rainflow rainflow = new Rainflow((range, mean, count) -> {
            if (range >= least) {
                int from = (int) Math.floor(range / ThermalRanges.WIDTH) * ThermalRanges.WIDTH;
                counts.merge(from, count, Double::sum);
                largest[0] = Math.max(largest[0], range);
            }
        });
        for (double value : values) {
            if (Double.isFinite(value)) {
                rainflow.add(value);
            }
        }
        rainflow.finish();
        List<ThermalRanges.Band> bands = new ArrayList<>();
        counts.forEach((from, count) -> bands.add(new ThermalRanges.Band(from, count)));
        return new ThermalRanges(kind, least, bands, largest[0]);
    }
}
