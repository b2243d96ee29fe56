package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * A check as it stood when its sheet was signed. Figures are whole parts of the kind's dimension.
 *
 * @param signOff in which signing
 * @param kind of what
 * @param number at which cylinder or main bearing, or null
 * @param spot where there, or null
 * @param value the figure, or null when it was not measured
 * @param atLeast the limit that stood, or null
 * @param atMost the limit that stood, or null
 * @param source whose limit it was; empty when there was none
 * @param verdict how it stood
 * @param accepted why it was accepted as it is, and by whom; empty when there was no need
 */
public record SignedCheck(
        Id<SignOff> signOff,
        MeasureKind kind,
        @Nullable Integer number,
        @Nullable Spot spot,
        @Nullable Long value,
        @Nullable Long atLeast,
        @Nullable Long atMost,
        String source,
        FitVerdict verdict,
        String accepted)
        implements Fact {
    public SignedCheck {
        if ((value == null) != (verdict == FitVerdict.NOT_MEASURED)) {
            throw new IllegalArgumentException("a check has a figure unless something was not measured");
        }
    }
}
