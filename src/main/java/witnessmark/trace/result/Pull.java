package witnessmark.trace.result;

import org.jspecify.annotations.Nullable;

/**
 * A sweep through the speeds at full throttle.
 *
 * @param at microseconds after the part's first sample
 * @param lasted microseconds
 * @param from speed, rpm
 * @param to speed, rpm
 * @param torque the most, N·m, or null when not logged
 * @param torqueAt at which speed, rpm
 * @param power the most, kW, or null when not logged
 * @param powerAt at which speed, rpm
 */
public record Pull(
        long at,
        long lasted,
        double from,
        double to,
        @Nullable Double torque,
        double torqueAt,
        @Nullable Double power,
        double powerAt) {}
