package witnessmark.mechanics;

import java.util.function.ToDoubleFunction;

/**
 * Uncertainty carried through a formula to first order: {@code u² = Σ (∂f/∂x · u(x))²} for figures measured
 * independently (JCGM 100:2008, Guide to the expression of uncertainty in measurement, equation 10).
 *
 * @param value of the formula
 * @param standard standard uncertainty of the value
 * @param shares what each figure brings to it: {@code |∂f/∂x|·u(x)}, in their order
 */
public record FirstOrder(double value, double standard, double[] shares) {
    /** Steps of a differential are this share of the uncertainty: small beside curvature, large beside rounding. */
    private static final double STEP = 0.01;

    public FirstOrder {
        shares = shares.clone();
    }

    @Override
    public double[] shares() {
        return shares.clone();
    }

    /**
     * @param formula of the figures
     * @param at the figures as measured
     * @param standards the standard uncertainty of each, 0 for what is exact
     */
    public static FirstOrder of(ToDoubleFunction<double[]> formula, double[] at, double[] standards) {
        double[] shares = new double[at.length];
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            double step = standards[i] * STEP;
            if (step > 0) {
                double slope = (formula.applyAsDouble(moved(at, i, step)) - formula.applyAsDouble(moved(at, i, -step)))
                        / (2 * step);
                shares[i] = Math.abs(slope) * standards[i];
                sum += shares[i] * shares[i];
            }
        }
        return new FirstOrder(formula.applyAsDouble(at), Math.sqrt(sum), shares);
    }

    /** The standard uncertainty of what lies anywhere within a half-width: {@code a/√3} (the same guide, 4.3.7). */
    public static double withinHalfWidth(double halfWidth) {
        return halfWidth / Math.sqrt(3);
    }

    private static double[] moved(double[] at, int which, double by) {
        double[] moved = at.clone();
        moved[which] += by;
        return moved;
    }
}
