package witnessmark.mechanics;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A crank and its rod, exact. Angles are in radians from top dead centre, ω in radians a second; the piston's way is
 * measured down from top dead centre and its acceleration is above 0 where it points away from the head (J. B. Heywood,
 * Internal Combustion Engine Fundamentals, 1988, section 2.2; C. F. Taylor, The Internal-Combustion Engine, volume 2,
 * chapter 8).
 *
 * @param radius half the stroke, above 0
 * @param rod length between centres, above the radius, in the same unit
 */
public record SliderCrank(double radius, double rod) {
    private static final int MOST_STEPS = 200;
    /** The mean over a turn of a smooth periodic function is exact long before that many points. */
    private static final int POINTS = 4096;

    public SliderCrank {
        if (!(radius > 0) || !(rod > radius)) {
            throw new IllegalArgumentException("a rod is longer than the throw of its crank");
        }
    }

    /** Radians a second of revolutions a minute. */
    public static double omega(double rpm) {
        return rpm * Math.PI / 30;
    }

    /** {@code 2·S·n} with the stroke S and n revolutions a second (Heywood, equation 2.9). */
    public static double meanPistonSpeed(double stroke, double rpm) {
        return 2 * stroke * rpm / 60;
    }

    /** Throw over rod, λ. */
    public double ratio() {
        return radius / rod;
    }

    private double root(double angle) {
        double across = ratio() * Math.sin(angle);
        return Math.sqrt(1 - across * across);
    }

    /** How far the piston is below its top dead centre. */
    public double way(double angle) {
        return radius * (1 - Math.cos(angle)) + rod * (1 - root(angle));
    }

    public double speed(double angle, double omega) {
        return radius * omega * Math.sin(angle) * (1 + ratio() * Math.cos(angle) / root(angle));
    }

    public double acceleration(double angle, double omega) {
        double sine = Math.sin(angle);
        double lambda = ratio();
        double root = root(angle);
        double second = lambda * (Math.cos(2 * angle) + lambda * lambda * Math.pow(sine, 4)) / (root * root * root);
        return radius * omega * omega * (Math.cos(angle) + second);
    }

    /** Speed of first and second order alone, {@code rω(sin θ + λ/2·sin 2θ)}. */
    public double speedOfTwoOrders(double angle, double omega) {
        return radius * omega * (Math.sin(angle) + ratio() / 2 * Math.sin(2 * angle));
    }

    /** Acceleration of first and second order alone, {@code rω²(cos θ + λ·cos 2θ)}. */
    public double accelerationOfTwoOrders(double angle, double omega) {
        return radius * omega * omega * (Math.cos(angle) + ratio() * Math.cos(2 * angle));
    }

    /** At top dead centre, exact: {@code rω²(1 + λ)}. */
    public double accelerationAtTop(double omega) {
        return radius * omega * omega * (1 + ratio());
    }

    /** At bottom dead centre, exact, below 0: {@code −rω²(1 − λ)}. */
    public double accelerationAtBottom(double omega) {
        return -radius * omega * omega * (1 - ratio());
    }

    /** Where the piston is fastest on its way down, which is where it is not accelerated. */
    public double angleOfTopSpeed() {
        UnivariateFunction acceleration = angle -> acceleration(angle, 1);
        return new BrentSolver(1e-14).solve(MOST_STEPS, acceleration, 1e-3, Math.PI / 2);
    }

    /** The same by first and second order alone: {@code cos θ = (√(1 + 8λ²) − 1) / 4λ}. */
    public double angleOfTopSpeedOfTwoOrders() {
        double lambda = ratio();
        return Math.acos((Math.sqrt(1 + 8 * lambda * lambda) - 1) / (4 * lambda));
    }

    /** The share of an order in the acceleration over {@code rω²}: the factor of {@code cos(order·θ)}. */
    public double order(int order) {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            double angle = 2 * Math.PI * i / POINTS;
            sum += acceleration(angle, 1) / radius * Math.cos(order * angle);
        }
        return 2 * sum / POINTS;
    }
}
