package witnessmark.mechanics;

/**
 * What lies above a piston at top dead centre, and the compression ratio it makes: {@code (Vs + Vc) / Vc} with
 * {@code Vs = π/4·B²·S} and {@code Vc = chamber + π/4·G²·t + π/4·B²·h + crown + crevice} (J. B. Heywood, Internal
 * Combustion Engine Fundamentals, 1988, equation 2.1).
 *
 * @param bore B, above 0
 * @param stroke S, above 0
 * @param chamber volume in the head, with its plug and valves
 * @param gasketBore G, as clamped
 * @param gasketThickness t, as clamped
 * @param deckClearance h, above 0 when the crown is below the deck
 * @param crown volume of dishes and pockets above 0, of a dome below
 * @param crevice volume between top land and bore, 0 where it is not counted
 */
public record ChamberStack(
        double bore,
        double stroke,
        double chamber,
        double gasketBore,
        double gasketThickness,
        double deckClearance,
        double crown,
        double crevice) {

    public ChamberStack {
        if (!(bore > 0) || !(stroke > 0)) {
            throw new IllegalArgumentException("bore and stroke are above 0");
        }
    }

    /** Volume of a disc in cubic centimetres. */
    public static double disc(double diameter, double height) {
        return Math.PI / 4 * diameter * diameter * height / 1000;
    }

    /** Volume the piston sweeps. */
    public double swept() {
        return disc(bore, stroke);
    }

    public double gasketVolume() {
        return disc(gasketBore, gasketThickness);
    }

    public double deckVolume() {
        return disc(bore, deckClearance);
    }

    /** Volume left at top dead centre. */
    public double clearance() {
        return chamber + gasketVolume() + deckVolume() + crown + crevice;
    }

    /** The ratio of the largest to the smallest volume; see {@link #ratio(double, double)}. */
    public double ratio() {
        return ratio(swept(), clearance());
    }

    /**
     * {@code (Vs + Vc) / Vc}.
     *
     * @throws IllegalArgumentException if nothing is left above the piston
     */
    public static double ratio(double swept, double clearance) {
        if (!(clearance > 0)) {
            throw new IllegalArgumentException("no volume is left above the piston: " + clearance);
        }
        return (swept + clearance) / clearance;
    }

    /**
     * The volume that has to be left for a ratio.
     *
     * @throws IllegalArgumentException if the ratio is 1 or less
     */
    public static double clearanceFor(double swept, double ratio) {
        if (!(ratio > 1)) {
            throw new IllegalArgumentException("a compression ratio is above 1, not " + ratio);
        }
        return swept / (ratio - 1);
    }

    /** With so much off the head face, whose opening of the chamber has that area in square millimetres. */
    public ChamberStack afterHeadSkim(double skim, double openingArea) {
        return withChamber(chamber - openingArea * skim / 1000);
    }

    /** With so much off the deck of the block. */
    public ChamberStack afterDeckSkim(double skim) {
        return withDeckClearance(deckClearance - skim);
    }

    /** With so much off the whole of the crown. */
    public ChamberStack afterCrownCut(double cut) {
        return withDeckClearance(deckClearance + cut);
    }

    public ChamberStack withGasket(double clampedBore, double clampedThickness) {
        return new ChamberStack(bore, stroke, chamber, clampedBore, clampedThickness, deckClearance, crown, crevice);
    }

    private ChamberStack withChamber(double other) {
        return new ChamberStack(bore, stroke, other, gasketBore, gasketThickness, deckClearance, crown, crevice);
    }

    private ChamberStack withDeckClearance(double other) {
        return new ChamberStack(bore, stroke, chamber, gasketBore, gasketThickness, other, crown, crevice);
    }

    /** What has to come off the head face for a ratio; below 0 when there is less there than it needs. */
    public double headSkimFor(double ratio, double openingArea) {
        return (clearance() - clearanceFor(swept(), ratio)) * 1000 / openingArea;
    }

    /** What has to come off the deck for a ratio. */
    public double deckSkimFor(double ratio) {
        return (clearance() - clearanceFor(swept(), ratio)) / disc(bore, 1);
    }
}
