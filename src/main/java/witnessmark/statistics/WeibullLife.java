package witnessmark.statistics;

/**
 * Lives by Weibull with a shape that is stated: {@code S(t) = exp(−(t/η)^β)}.
 *
 * @param shape β, above 0: below 1 it fails young, at 1 at any age alike, above 1 it wears out
 * @param scale η, the life that 63.2 in 100 do not reach, in any unit, above 0
 */
public record WeibullLife(double shape, double scale) {
    /** @throws IllegalArgumentException unless both are above 0 */
    public WeibullLife {
        if (!(shape > 0 && scale > 0) || Double.isInfinite(shape) || Double.isInfinite(scale)) {
            throw new IllegalArgumentException("shape and scale are above 0");
        }
    }

    /**
     * The scale that is likeliest with that shape: {@code (Σ t^β / r)^(1/β)}, every life from its entry on (R. B. Abernethy, The
     * New Weibull Handbook, chapter 6; a life to the power of the shape is exponential).
     *
     * @param shape β
     * @param entries the age from which each was watched, 0 or more
     * @param exits the age at which each failed or was last seen
     * @param failures how many of them failed, 1 or more
     */
    public static WeibullLife withShape(double shape, double[] entries, double[] exits, int failures) {
        if (failures < 1) {
            throw new IllegalArgumentException("without a failure there is no likeliest scale");
        }
        return new WeibullLife(shape, Math.pow(exposure(shape, entries, exits) / failures, 1 / shape));
    }

    /**
     * The least scale at a confidence: {@code (2 Σ t^β / χ²(C; 2r + 2))^(1/β)}, from no failure on (the same; NIST/SEMATECH
     * e-Handbook 8.4.5.1 on lives to the power of the shape).
     */
    public static WeibullLife atLeast(double shape, double[] entries, double[] exits, int failures, double confidence) {
        double least =
                new MeanLife(exposure(shape, entries, exits), failures, MeanLife.Ends.AT_A_TIME).atLeast(confidence);
        return new WeibullLife(shape, Math.pow(least, 1 / shape));
    }

    private static double exposure(double shape, double[] entries, double[] exits) {
        if (entries.length != exits.length || !(shape > 0)) {
            throw new IllegalArgumentException("every life has its entry and its exit, and the shape is above 0");
        }
        double sum = 0;
        for (int i = 0; i < exits.length; i++) {
            if (!(entries[i] >= 0 && exits[i] >= entries[i])) {
                throw new IllegalArgumentException("a life ends after it begins");
            }
            sum += Math.pow(exits[i], shape) - Math.pow(entries[i], shape);
        }
        return sum;
    }

    /** The chance of living longer than this. */
    public double survival(double age) {
        return Math.exp(-Math.pow(age / scale, shape));
    }

    /**
     * The chance of living from one age to a later one, having reached the first.
     *
     * @param age reached, 0 or more
     * @param further 0 or more
     */
    public double survivalFrom(double age, double further) {
        if (!(age >= 0 && further >= 0)) {
            throw new IllegalArgumentException("ages are 0 or more");
        }
        return Math.exp(Math.pow(age / scale, shape) - Math.pow((age + further) / scale, shape));
    }

    /** The age by which that share has failed: 0.1 for the life nine in ten reach. */
    public double ageBy(double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("a share lies between 0 and 1");
        }
        return scale * Math.pow(-Math.log1p(-share), 1 / shape);
    }
}
