package witnessmark.trace.result;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Mean oil pressure at speed over the run, piece by piece.
 *
 * @param piece how long a piece is, microseconds
 * @param means bar; NaN for a piece without speed
 */
public record OilTrend(long piece, List<Double> means) {
    /** Less than this share of what it was is a decline. Common practice, no source. */
    private static final double DECLINE = 0.8;

    public OilTrend {
        means = List.copyOf(means);
    }

    /** The last piece with speed, if it is well under the first two's mean; else null. */
    public @Nullable Double declined() {
        List<Double> known = means.stream().filter(mean -> !mean.isNaN()).toList();
        if (known.size() < 3) {
            return null;
        }
        double last = known.get(known.size() - 1);
        return last < DECLINE * first(known) ? last : null;
    }

    /** What it was at first, bar; NaN when there is too little. */
    public double first() {
        List<Double> known = means.stream().filter(mean -> !mean.isNaN()).toList();
        return known.size() < 3 ? Double.NaN : first(known);
    }

    private static double first(List<Double> known) {
        return (known.get(0) + known.get(1)) / 2;
    }
}
