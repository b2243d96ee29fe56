package witnessmark.trace.look;

import java.util.ArrayList;
import java.util.List;
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
        Bands found = new Bands(least);
        Rainflow rainflow = new Rainflow(found);
        int at = 0;
        while (at < values.length) {
            int from = at;
            while (at < values.length && Double.isFinite(values[at])) {
                at++;
            }
            rainflow.add(values, from, at++);
        }
        rainflow.finish();
        return new ThermalRanges(kind, least, found.bands(), found.largest);
    }

    /** Counts ranges by band. */
    private static final class Bands implements Rainflow.Counted {
        /** The last is for all beyond, which are no temperatures. */
        private static final int MOST = 1000;

        private final double least;
        private final double[] counts = new double[MOST];
        private double largest;

        Bands(double least) {
            this.least = least;
        }

        @Override
        public void range(double range, double mean, double count) {
            if (range >= least) {
                counts[(int) Math.min(range / ThermalRanges.WIDTH, MOST - 1)] += count;
                largest = Math.max(largest, range);
            }
        }

        List<ThermalRanges.Band> bands() {
            List<ThermalRanges.Band> bands = new ArrayList<>();
            for (int i = 0; i < counts.length; i++) {
                if (counts[i] > 0) {
                    bands.add(new ThermalRanges.Band(i * ThermalRanges.WIDTH, counts[i]));
                }
            }
            return bands;
        }
    }
}
