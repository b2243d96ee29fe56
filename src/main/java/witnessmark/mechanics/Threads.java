package witnessmark.mechanics;

/** Tensile stress areas of screw threads. */
public final class Threads {
    private Threads() {}

    /** {@code π/4·(d − 0.9382·P)²} (ISO 898-1), d nominal diameter and P pitch in one unit; the area in its square. */
    public static double metricStressArea(double diameter, double pitch) {
        double stressed = diameter - 0.9382 * pitch;
        return Math.PI / 4 * stressed * stressed;
    }

    /** {@code 0.7854·(d − 0.9743/n)²} (ASME B1.1, with its figures as printed), d nominal diameter in inches, n threads to the inch; square inches. */
    public static double unifiedStressArea(double diameter, double threads) {
        double stressed = diameter - 0.9743 / threads;
        return 0.7854 * stressed * stressed;
    }
}
