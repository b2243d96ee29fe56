package witnessmark.fit;

/**
 * What is wanted of a fit.
 *
 * @param kind which figure
 * @param value what it should be, in whole parts of its dimension
 */
public record Goal(Kind kind, long value) {
    /** What can be solved for. */
    public enum Kind {
        /** The mean deck clearance of every cylinder, in nanometres. */
        DECK_CLEARANCE,
        /** The least crown to head of the row, in nanometres. */
        CROWN_TO_HEAD,
        /** The highest compression ratio of the row, in ten-thousandths: what a rule book limits. */
        COMPRESSION_RATIO
    }
}
