package witnessmark.mechanics;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How far a rod stretches at overlap top dead centre, where no gas holds the piston back: {@code dx = F(x)/(E·A(x))·dx}
 * with the acceleration falling linearly from {@code rω²(1 + λ)} at the small end to {@code rω²} at the big end. Metres,
 * kilograms, pascals.
 *
 * @param crank throw and rod
 * @param pinEnd mass that hangs at the small end: piston, pin, rings and locks, and the eye where the shank alone is the rod
 * @param modulus of elasticity, above 0
 * @param density of the rod, 0 or above
 * @param length of what stretches, above 0
 */
public record RodStretch(SliderCrank crank, double pinEnd, double modulus, double density, double length) {
    /** Enough that a section which grows fourfold over a piece costs nothing that can be seen. */
    private static final int ORDER = 20;

    public RodStretch {
        if (!(modulus > 0) || !(density >= 0) || !(length > 0) || !(pinEnd >= 0)) {
            throw new IllegalArgumentException("a rod has a modulus and a length, and its masses are not below 0");
        }
    }

    /** {@code F·L / (A·E)}. */
    public static double underForce(double force, double length, double area, double modulus) {
        return force * length / (area * modulus);
    }

    /**
     * A rod of one section: {@code r·ω²·L/(E·A)·[m_p(1+λ) + m_s(1/2 + λ/3)]}.
     *
     * @param area of the section, above 0
     */
    public double uniform(double area, double omega) {
        double shank = density * area * length;
        double lambda = crank.ratio();
        return crank.radius()
                * omega
                * omega
                * length
                / (modulus * area)
                * (pinEnd * (1 + lambda) + shank * (0.5 + lambda / 3));
    }

    /** Pull at the big end of a rod of one section. */
    public double forceAtBigEnd(double area, double omega) {
        double lambda = crank.ratio();
        return crank.radius() * omega * omega * (pinEnd * (1 + lambda) + density * area * length * (1 + lambda / 2));
    }

    /**
     * A rod whose section changes: areas at places from the small end, straight between them, level beyond the first and
     * the last. Integrated piece by piece by a Gauss rule.
     *
     * @param areas at distances from the small end, at least one, all above 0
     */
    public double profile(NavigableMap<Double, Double> areas, double omega) {
        TreeMap<Double, Double> places = new TreeMap<>(areas);
        places.putIfAbsent(0.0, at(areas, 0));
        places.putIfAbsent(length, at(areas, length));
        GaussIntegrator unit = new GaussIntegratorFactory().legendre(ORDER, 0, 1);
        double stretch = 0;
        double inertia = 0; // mass times acceleration of what lies above a piece
        double from = 0;
        for (double to : places.subMap(0.0, false, length, true).keySet()) {
            double start = from;
            double above = inertia;
            double wide = to - start;
            stretch += wide
                    * unit.integrate(part -> {
                        double x = start + part * wide;
                        double pull = pinEnd * accelerationAt(0, omega) + above + inertia(areas, unit, start, x, omega);
                        return pull / (modulus * at(areas, x));
                    });
            inertia += inertia(areas, unit, start, to, omega);
            from = to;
        }
        return stretch;
    }

    private double inertia(
            NavigableMap<Double, Double> areas, GaussIntegrator unit, double from, double to, double omega) {
        return (to - from)
                * unit.integrate(part -> {
                    double x = from + part * (to - from);
                    return density * at(areas, x) * accelerationAt(x, omega);
                });
    }

    private double accelerationAt(double x, double omega) {
        return crank.radius() * omega * omega * (1 + crank.ratio() * (1 - x / length));
    }

    private static double at(NavigableMap<Double, Double> areas, double x) {
        Map.Entry<Double, Double> low = areas.floorEntry(x);
        Map.Entry<Double, Double> high = areas.ceilingEntry(x);
        if (low == null || high == null) {
            Map.Entry<Double, Double> end = low == null ? high : low;
            if (end == null) {
                throw new IllegalArgumentException("a rod has a section somewhere");
            }
            return end.getValue();
        }
        double wide = high.getKey() - low.getKey();
        return wide == 0
                ? low.getValue()
                : low.getValue() + (high.getValue() - low.getValue()) * (x - low.getKey()) / wide;
    }
}
