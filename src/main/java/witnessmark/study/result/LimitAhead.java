package witnessmark.study.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;

/**
 * A figure of a limit, which readings may have passed, or be going towards, or neither.
 *
 * @param limit which limit
 * @param what which of its figures
 * @param figure where it lies, in the unit of the readings
 * @param passed whether the last reading is past it
 * @param soonest running from the day looked at until the line may meet it, hours, 0 or more; null when
 *     passed, or when nothing says that they go there
 * @param likely until it does at this rate
 * @param latest until it does at the least rate
 * @param runOn the signed decision to go on past it, or null
 */
public record LimitAhead(
        Entry<ReadingLimit> limit,
        What what,
        double figure,
        boolean passed,
        @Nullable Double soonest,
        @Nullable Double likely,
        @Nullable Double latest,
        @Nullable Entry<RunOn> runOn) {
    /** A figure of a limit. */
    public enum What {
        AT_MOST,
        AT_LEAST,
        /** So far above the baseline, at the most. */
        ABOVE_BASELINE,
        /** So far below the baseline, at the most. */
        BELOW_BASELINE
    }

    /** Whether the last reading is past it and nobody signed to go on. */
    public boolean over() {
        return passed && runOn == null;
    }

    /** Whether it is known when it will be met. */
    public boolean ahead() {
        return likely != null;
    }
}
