package witnessmark.study.result;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.EngineSpeed;

/**
 * How hard an engine was used in a stretch of running.
 *
 * @param runs how many runs
 * @param highest the highest speed written of any, or null when none says
 * @param loadedShare running under load over running, of the runs that say it; NaN when none does
 */
public record UseOfRuns(int runs, @Nullable EngineSpeed highest, double loadedShare) {}
