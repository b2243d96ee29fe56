package witnessmark.mechanics;

/**
 * How far what is hot grows, and by how much an engine closes or opens above its piston for it.
 *
 * @param alpha linear expansion in one for each kelvin
 * @param length that grows
 * @param warmer kelvins above what it was measured at
 */
public record Growth(double alpha, double length, double warmer) {
    /** {@code α·L·ΔT}, in the unit of the length. */
    public static double of(double alpha, double length, double warmer) {
        return alpha * length * warmer;
    }

    public double amount() {
        return of(alpha, length, warmer);
    }

    /**
     * By how much the piston comes nearer the head: {@code α_c·r·ΔT_c + α_rod·l·ΔT_rod + α_p·CH·ΔT_p − α_b·H·ΔT_b}.
     *
     * @param crankThrow with half the stroke
     * @param rod between centres
     * @param piston from pin to crown
     * @param block from the middle of the main bearings to the deck
     * @return above 0 where it closes
     */
    public static double closes(Growth crankThrow, Growth rod, Growth piston, Growth block) {
        return crankThrow.amount() + rod.amount() + piston.amount() - block.amount();
    }
}
