package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.RunningTime;

/**
 * One step of running an engine in.
 *
 * @param run in which run
 * @param number which step, 1 or more
 * @param speed at which speed, or up to which; null when not said
 * @param loadPermille share of full load, 0 to 1000, or null when not said
 * @param lasted how long
 * @param words what was done: cam bedded in, sweeps below peak torque, oil changed
 */
public record RunInStep(
        Id<Run> run,
        int number,
        @Nullable EngineSpeed speed,
        @Nullable Integer loadPermille,
        RunningTime lasted,
        String words)
        implements Fact {
    public RunInStep {
        if (number < 1 || loadPermille != null && (loadPermille < 0 || loadPermille > 1_000)) {
            throw new IllegalArgumentException("steps are counted from 1, and load is a share of full load");
        }
    }
}
