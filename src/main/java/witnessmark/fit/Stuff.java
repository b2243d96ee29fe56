package witnessmark.fit;

import witnessmark.domain.Metal;

/**
 * How metals of engines grow and stretch; values from memory (Shigley's Mechanical Engineering Design, tables A-5 and
 * 4-2), known to a share.
 *
 * @param alpha linear expansion in one for each kelvin
 * @param modulus of elasticity, in pascals
 * @param density in kilograms for each cubic metre
 */
public record Stuff(double alpha, double modulus, double density) {
    /** Alloys differ from these by that share, either way. */
    public static final double ALPHA_HALF_WIDTH = 0.08;

    public static final double MODULUS_HALF_WIDTH = 0.03;

    public static Stuff of(Metal metal) {
        return switch (metal) {
            case CAST_IRON -> new Stuff(10.8e-6, 110e9, 7_200);
            case STEEL -> new Stuff(11.7e-6, 207e9, 7_850);
            case ALUMINIUM -> new Stuff(21.5e-6, 71e9, 2_700);
            case TITANIUM -> new Stuff(8.8e-6, 114e9, 4_430);
        };
    }
}
