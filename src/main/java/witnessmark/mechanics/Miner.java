package witnessmark.mechanics;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Damage of cycles of different size added up: {@code D = Σ n/N} (A. Palmgren 1924, M. A. Miner 1945). */
public final class Miner {
    private Miner() {}

    /**
     * The share of life that counted ranges use; at 1 the rule expects failure. Means are not allowed for.
     *
     * @param life cycles to failure at an amplitude, as {@link Basquin#lifeAt}
     */
    public static double damage(List<Rainflow.Cycle> cycles, DoubleUnaryOperator life) {
        return cycles.stream()
                .mapToDouble(cycle -> cycle.count() / life.applyAsDouble(cycle.amplitude()))
                .sum();
    }

    /**
     * The amplitude of which so many cycles do as much as all those counted: {@code (Σ n·a^m / count)^(1/m)}.
     *
     * @param slope m of the S–N line, above 0
     * @param count of equal cycles, above 0
     */
    public static double equivalentAmplitude(List<Rainflow.Cycle> cycles, double slope, double count) {
        double sum = cycles.stream()
                .mapToDouble(cycle -> cycle.count() * Math.pow(cycle.amplitude(), slope))
                .sum();
        return Math.pow(sum / count, 1 / slope);
    }
}
