package witnessmark.trace.result;

import org.jspecify.annotations.Nullable;

/**
 * An over-rev as a trace shows it.
 *
 * @param at its first sample above, microseconds after the part's first
 * @param lasted time above, each sample until the next, microseconds
 * @param samples above
 * @param peak the highest speed held for two samples, rpm
 * @param how whether the engine or the wheels drove it there
 * @param gear at the peak, or null when not logged
 * @param throttle the most there was up to the peak, %, or null when not logged
 */
public record Excursion(
        long at,
        long lasted,
        long samples,
        double peak,
        How how,
        @Nullable Integer gear,
        @Nullable Double throttle) {
    /** What drove the engine over the limit. */
    public enum How {
        /** The throttle was open: the limiter let it over. */
        LIMITER,
        /** The throttle was shut: the wheels turned it, as when a gear too low is taken. */
        MECHANICAL,
        /** No throttle was logged. */
        NOT_KNOWN
    }
}
