package witnessmark.logbook.standing;

/**
 * Fitted parts and sets by how they stand to their recorded limits, each counted once, at its worst.
 *
 * @param over at or past a limit
 * @param notKnown not over, but what was run against some limit is not known in full
 * @param inside inside every limit recorded
 * @param noLimit without a recorded limit
 */
public record PartCount(int over, int notKnown, int inside, int noLimit) {
    public int all() {
        return over + notKnown + inside + noLimit;
    }
}
