package witnessmark.logbook.standing;

/**
 * Fitted parts and sets by how they stand, each counted once, at its worst.
 *
 * @param held held until signed clear
 * @param over at or past a limit
 * @param runOn past a limit, and signed
 * @param due inside, and not any more after what is to come
 * @param notKnown something about them is not known in full
 * @param inside inside everything recorded
 * @param noLimit without anything recorded they could be held against
 */
public record PartCount(int held, int over, int runOn, int due, int notKnown, int inside, int noLimit) {
    public int all() {
        return held + over + runOn + due + notKnown + inside + noLimit;
    }
}
