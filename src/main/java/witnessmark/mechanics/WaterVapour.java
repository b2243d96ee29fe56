package witnessmark.mechanics;

/**
 * Water vapour in air, pressures in kilopascals and temperatures in degrees Celsius. Saturation over water is that of A. L.
 * Buck (Journal of Applied Meteorology 20, 1981, with his constants of 1996), within 0.04 % of IAPWS R7-97 from 0 to 50.
 */
public final class WaterVapour {
    /** The coldest the formula is for. */
    public static final double COLDEST = -40;

    /** The warmest the formula is for. */
    public static final double WARMEST = 50;

    private WaterVapour() {}

    /**
     * The most vapour air can hold: {@code 0.61121·exp((18.678 − t/234.5)·t/(257.14 + t))}.
     *
     * @throws IllegalArgumentException outside what the formula is for
     */
    public static double saturation(double celsius) {
        if (!(celsius >= COLDEST && celsius <= WARMEST)) {
            throw new IllegalArgumentException("no vapour pressure is known at " + celsius);
        }
        return 0.61121 * Math.exp((18.678 - celsius / 234.5) * celsius / (257.14 + celsius));
    }
}
