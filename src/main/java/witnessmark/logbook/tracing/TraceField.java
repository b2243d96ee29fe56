package witnessmark.logbook.tracing;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Counter;

/** A figure of a run that a trace may say. */
public enum TraceField {
    START(null),
    RUNNING(Counter.RUNNING),
    LOADED(Counter.LOADED),
    HIGH_SPEED(Counter.HIGH_SPEED),
    DISTANCE(Counter.DISTANCE),
    HEAT_CYCLES(Counter.HEAT_CYCLES),
    PULLS(Counter.PULLS),
    OVER_REVS(Counter.OVER_REVS),
    HIGHEST(null),
    WATER(null),
    OIL_TEMPERATURE(null),
    OIL_PRESSURE(null);

    private final @Nullable Counter counter;

    TraceField(@Nullable Counter counter) {
        this.counter = counter;
    }

    /** The counter it feeds; empty when it feeds none. */
    public Optional<Counter> counter() {
        return Optional.ofNullable(counter);
    }
}
