package witnessmark.mechanics;

/**
 * Bolt and clamped parts as springs side by side (Shigley's Mechanical Engineering Design, chapter 8: joint diagram,
 * stiffness constant, load factor). One unit of force and one of length throughout.
 *
 * @param bolt stiffness of the bolt, above 0
 * @param members stiffness of what is clamped, above 0
 */
public record BoltedJoint(double bolt, double members) {
    public BoltedJoint {
        if (!(bolt > 0) || !(members > 0)) {
            throw new IllegalArgumentException("stiffnesses are above 0");
        }
    }

    /** The share of an outside load that the bolt takes: {@code C = kb / (kb + km)}. */
    public double constant() {
        return bolt / (bolt + members);
    }

    /** Stiffness of both in a row: {@code kb·km / (kb + km)}. */
    public double inSeries() {
        return bolt * members / (bolt + members);
    }

    /** The pull that turning a nut by an angle in degrees adds, once all is snug. */
    public double fromAngle(double pitch, double degrees) {
        return pitch * degrees / 360 * inSeries();
    }

    /** The pull of the bolt under an outside load: {@code Fi + C·P}. */
    public double boltForce(double preload, double load) {
        return preload + constant() * load;
    }

    /** What still clamps under an outside load: {@code Fi − (1 − C)·P}; 0 or less when the joint has opened. */
    public double clampForce(double preload, double load) {
        return preload - (1 - constant()) * load;
    }

    /** The outside load that opens the joint: {@code Fi / (1 − C)}. */
    public double separationLoad(double preload) {
        return preload / (1 - constant());
    }

    /** By how much an outside load on a bolt may grow before the bolt reaches its proof load. */
    public double loadFactor(double proof, double preload, double load) {
        return (proof - preload) / (constant() * load);
    }

    /** Proof load over the pull under load. */
    public double yieldFactor(double proof, double preload, double load) {
        return proof / boltForce(preload, load);
    }

    /** By how much an outside load on a bolt may grow before the joint opens. */
    public double separationFactor(double preload, double load) {
        return separationLoad(preload) / load;
    }

    /** How many bolts, as a figure with decimals, share a load so that each has that load factor. */
    public double boltsFor(double total, double loadFactor, double proof, double preload) {
        return constant() * loadFactor * total / (proof - preload);
    }
}
