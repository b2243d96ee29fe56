package witnessmark.fit.result.face;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;

/**
 * How fast a low zone comes back.
 *
 * @param from depth there after the skim, or at the look before
 * @param now depth there now
 * @param hours run meanwhile, or null when not known
 * @param cycles heat cycles meanwhile, or null when not known
 * @param perHour millimetres for each running hour, or null while it cannot be said
 * @param perCycle millimetres for each heat cycle, or null while it cannot be said
 * @param limit how deep it may be, or null when nobody set a limit
 * @param hoursLeft running hours until it meets the limit if it goes on like this; null while that cannot be said
 */
public record Comeback(
        Length from,
        Length now,
        @Nullable Double hours,
        @Nullable Long cycles,
        @Nullable Range perHour,
        @Nullable Range perCycle,
        @Nullable Length limit,
        @Nullable Range hoursLeft) {}
