package witnessmark.ledger.result;

import java.util.function.Function;

/** Why a mark stands where it does. */
public sealed interface MarkReason permits HeldBy, LimitUse, ReadingUse, PrintedDate, UnprovenBuild {
    /** How it stands by itself, without looking ahead. */
    MarkState state();

    /** One answer for each kind of reason. */
    default <T> T fold(
            Function<HeldBy, T> held,
            Function<LimitUse, T> limit,
            Function<ReadingUse, T> reading,
            Function<PrintedDate, T> date,
            Function<UnprovenBuild, T> unproven) {
        if (this instanceof HeldBy by) {
            return held.apply(by);
        }
        if (this instanceof LimitUse use) {
            return limit.apply(use);
        }
        if (this instanceof ReadingUse use) {
            return reading.apply(use);
        }
        if (this instanceof UnprovenBuild build) {
            return unproven.apply(build);
        }
        return date.apply((PrintedDate) this);
    }
}
