package witnessmark.trace.result;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.RunningTime;

/**
 * What is written of the run a trace is of, to hold its time against.
 *
 * @param running time the engine ran, or null
 * @param laps driven, or null
 * @param lap a usual lap's time, or null
 */
public record RunFigures(
        @Nullable RunningTime running,
        @Nullable Integer laps,
        @Nullable RunningTime lap) {
    /** How long it ran by these; null when they say nothing. */
    public @Nullable RunningTime expected() {
        if (running != null && running.millis() > 0) {
            return running;
        }
        return laps == null || laps <= 0 || lap == null || lap.millis() <= 0
                ? null
                : new RunningTime(laps * lap.millis());
    }
}
