package witnessmark.mechanics;

/**
 * A line of strength over life, {@code S = a·N^b} (O. H. Basquin 1910). One unit of stress throughout.
 *
 * @param strength a, the strength at one cycle, above 0
 * @param exponent b, below 0
 */
public record Basquin(double strength, double exponent) {
    public Basquin {
        if (!(strength > 0) || !(exponent < 0)) {
            throw new IllegalArgumentException("strength falls with life: " + strength + ", " + exponent);
        }
    }

    /**
     * The line of steel between a thousand and a million cycles: {@code a = (f·Sut)²/Se},
     * {@code b = −⅓·log10(f·Sut/Se)} (Shigley's Mechanical Engineering Design, equations 6-14 and 6-15).
     *
     * @param tensile Sut
     * @param endurance Se, below {@code f·Sut}
     * @param share f, the share of Sut that stands a thousand cycles
     */
    public static Basquin ofSteel(double tensile, double endurance, double share) {
        double low = share * tensile;
        return new Basquin(low * low / endurance, -Math.log10(low / endurance) / 3);
    }

    /** m of {@code N ∝ S^−m}: {@code −1/b}. */
    public double slope() {
        return -1 / exponent;
    }

    public double strengthAt(double cycles) {
        return strength * Math.pow(cycles, exponent);
    }

    /** Cycles to failure at a stress amplitude above 0. */
    public double lifeAt(double amplitude) {
        return Math.pow(amplitude / strength, 1 / exponent);
    }
}
