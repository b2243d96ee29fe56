package witnessmark.mechanics;

/**
 * A round beam that rests on two supports and is pulled between them (Shigley's Mechanical Engineering Design, table A-9,
 * case 6). One unit of length and of force throughout.
 *
 * @param span between the supports, above 0
 * @param diameter of the beam, above 0
 * @param modulus of elasticity, above 0
 */
public record Beam(double span, double diameter, double modulus) {
    public Beam {
        if (!(span > 0) || !(diameter > 0) || !(modulus > 0)) {
            throw new IllegalArgumentException("a beam has a span, a diameter and a modulus");
        }
    }

    /** {@code π·d⁴/64}. */
    public double secondMoment() {
        return Math.PI * Math.pow(diameter, 4) / 64;
    }

    /**
     * How far the beam moves at a place under a force at another: {@code F·b·x·(l² − b² − x²) / (6·E·I·l)} for x up to the
     * force, with b from the force to the far support; mirrored beyond it.
     *
     * @param force at {@code forceAt}; the way it moves is the way it is pulled
     * @param forceAt from the left support, within the span
     * @param at from the left support, within the span
     */
    public double moves(double force, double forceAt, double at) {
        if (!(forceAt >= 0 && forceAt <= span && at >= 0 && at <= span)) {
            throw new IllegalArgumentException("a beam carries between its supports");
        }
        double x = at <= forceAt ? at : span - at;
        double b = at <= forceAt ? span - forceAt : forceAt;
        return force * b * x * (span * span - b * b - x * x) / (6 * modulus * secondMoment() * span);
    }
}
