package witnessmark.domain;

/**
 * A place on a part: which way and how far lie as its drawing says.
 *
 * @param around degrees, 0 to 359
 * @param out hundredths, 0 to 100
 */
public record PartSpot(int around, int out) {
    public PartSpot {
        if (!isWithin(around, out)) {
            throw new IllegalArgumentException("a place on a part is within it");
        }
    }

    static boolean isWithin(int around, int out) {
        return around >= 0 && around <= 359 && out >= 0 && out <= 100;
    }
}
