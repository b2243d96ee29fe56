package witnessmark.mechanics;

/** The pull of a fastener by the way it was tightened. Newtons, millimetres, newton metres, newtons to the mm². */
public final class Preload {
    private Preload() {}

    /** {@code F = T / (K·d)}: torque in newton metres, nut factor K, nominal diameter in millimetres. */
    public static double fromTorque(double torque, double nutFactor, double diameter) {
        if (!(nutFactor > 0) || !(diameter > 0)) {
            throw new IllegalArgumentException("nut factor and diameter are above 0");
        }
        return torque * 1000 / (nutFactor * diameter);
    }

    /** {@code T = K·d·F}, in newton metres. */
    public static double torqueFor(double force, double nutFactor, double diameter) {
        return nutFactor * diameter * force / 1000;
    }

    /** {@code F = δ·E·A / l}: stretch δ, modulus E, area A of the shank that stretches, its length l. */
    public static double fromStretch(double stretch, double modulus, double area, double length) {
        if (!(length > 0)) {
            throw new IllegalArgumentException("what stretches has a length");
        }
        return stretch * modulus * area / length;
    }

    /** {@code δ = F·l / (E·A)}. */
    public static double stretchOf(double force, double modulus, double area, double length) {
        return force * length / (modulus * area);
    }
}
