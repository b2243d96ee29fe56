package witnessmark.wording;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.fit.result.LessonCheck;
import witnessmark.fit.result.Pull;
import witnessmark.ledger.result.MarkState;

/** Under which mark a figure of a build sheet and the pull of a joint stand, on the bench and on paper alike. */
public final class FitMarks {
    private FitMarks() {}

    /** The mark of a figure; null where nothing is set to hold it against. */
    public static @Nullable MarkState of(FitVerdict verdict, boolean accepted) {
        return switch (verdict) {
            case OUTSIDE -> accepted ? MarkState.RUN_ON : MarkState.OVER;
            case NOT_MEASURED -> MarkState.NOT_KNOWN;
            case OFF_AIM -> MarkState.DUE;
            case INSIDE -> MarkState.WITHIN;
            case NO_LIMIT -> null;
        };
    }

    /** The mark of what a lesson asks. */
    public static MarkState of(LessonCheck check) {
        return switch (check.state()) {
            case MET -> MarkState.WITHIN;
            case NOT_MET -> check.open() ? MarkState.OVER : MarkState.RUN_ON;
            case NOT_MEASURED, NOT_ANSWERED -> check.open() ? MarkState.NOT_KNOWN : MarkState.RUN_ON;
        };
    }

    /** The mark of what a joint pulls with; null where there is nothing to hold it against. */
    public static @Nullable MarkState of(Pull.Finding finding) {
        return switch (finding) {
            case OPENS, PAST_PROOF -> MarkState.OVER;
            case MAY_OPEN, MAY_PASS_PROOF -> MarkState.DUE;
            case NOTHING_AGAINST -> MarkState.WITHIN;
            case NOT_KNOWN -> MarkState.NOT_KNOWN;
            case NOTHING_TO_HOLD_AGAINST -> null;
        };
    }
}
