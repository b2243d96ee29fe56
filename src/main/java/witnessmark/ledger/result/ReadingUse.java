package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.quantity.RunningTime;

/**
 * A limit of readings, and what was read last.
 *
 * @param limit which limit
 * @param part the part it falls on, or null when it is the engine's
 * @param engine the engine, or the one the part is in; null on the shelf
 * @param worst the last reading of the place that stands worst, or null when nothing was ever read
 * @param baseline what that is held against, or null when there is none
 * @param broken which of the limit's figures it breaks, or {@link Broken#NONE}
 * @param since what the engine or part ran since the place read longest ago was last read; its whole life when none was
 * @param runOn the decision to go on nevertheless, or null
 */
public record ReadingUse(
        Entry<ReadingLimit> limit,
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Entry<Reading> worst,
        @Nullable Entry<Reading> baseline,
        Broken broken,
        Life since,
        @Nullable Entry<RunOn> runOn)
        implements MarkReason {
    /** What a reading may break, worst first. */
    public enum Broken {
        AT_MOST,
        AT_LEAST,
        FALL,
        CHANGE,
        GRADE,
        NONE
    }

    /** Whether it was never read, or not since more running than the limit allows. */
    public boolean old() {
        RunningTime every = limit.fact().every();
        return worst == null || every != null && since.highest() >= every.millis();
    }

    @Override
    public MarkState state() {
        if (broken != Broken.NONE) {
            return runOn == null ? MarkState.OVER : MarkState.RUN_ON;
        }
        return old() ? MarkState.NOT_KNOWN : MarkState.WITHIN;
    }
}
