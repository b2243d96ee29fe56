package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.RunningTime;

/**
 * One excursion over the speed that asks for an inspection. It stays in the history of every part that was there.
 *
 * @param run in which run
 * @param peak the highest speed of it
 * @param lasted how long it was over that speed, or null when not known
 * @param gear between which gears, in words; empty when not known
 * @param from what the peak was read from, or null
 * @param note anything else
 */
public record OverRev(
        Id<Run> run,
        EngineSpeed peak,
        @Nullable RunningTime lasted,
        String gear,
        @Nullable SpeedSource from,
        String note)
        implements Fact {}
