package witnessmark.trace.result;

import org.jspecify.annotations.Nullable;

/**
 * Oil pressure under what the engine's speed asks for.
 *
 * @param at its first sample, microseconds after the part's first
 * @param lasted until pressure or speed was again as it should be, microseconds
 * @param lowest bar
 * @param floor what it should have been there, bar
 * @param speed of the engine there, rpm
 * @param lateral acceleration there, g, or null when not logged
 */
public record PressureDip(
        long at,
        long lasted,
        double lowest,
        double floor,
        double speed,
        @Nullable Double lateral) {}
