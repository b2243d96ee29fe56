package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * A cause of an incident in a line.
 *
 * @param incident of which incident
 * @param statement what it was
 * @param area where it lies
 * @param share its share of the blame in hundredths of a percent, or null while nobody has said
 * @param by who holds it to be so
 * @param note anything else
 * @param predicts what would have to be seen if it were so, or null when nobody said
 */
public record Cause(
        Id<Incident> incident,
        String statement,
        CauseArea area,
        @Nullable Integer share,
        String by,
        String note,
        @AddedLater @Nullable String predicts)
        implements Fact {
    /** The whole of the blame, in hundredths of a percent. */
    public static final int WHOLE = 10_000;

    public Cause {
        if (statement.isBlank()) {
            throw new IllegalArgumentException("a cause says what it was");
        }
        if (share != null && (share < 0 || share > WHOLE)) {
            throw new IllegalArgumentException("a share of the blame is from nothing to the whole");
        }
    }
}
