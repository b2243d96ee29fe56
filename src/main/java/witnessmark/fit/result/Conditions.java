package witnessmark.fit.result;

import witnessmark.domain.Metal;

/**
 * How warm the parts of an engine are beside what they were measured at, in degrees Celsius, and what they are made of.
 *
 * @param block mean between main bearings and deck
 * @param crank mean of a throw
 * @param rods mean of a rod
 * @param pistons mean between pin and crown
 * @param measuredAt what the sheet was measured at
 * @param metals what they are made of
 * @param assumed whether somebody wrote all of it down, or some of it is taken as usual
 */
public record Conditions(
        double block, double crank, double rods, double pistons, double measuredAt, Metals metals, boolean assumed) {
    /** Temperature at which lengths hold unless somebody says otherwise (ISO 1). */
    public static final double REFERENCE = 20;

    /** What an engine is made of. */
    public record Metals(Metal block, Metal crank, Metal rods, Metal pistons) {}
}
