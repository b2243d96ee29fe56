package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * An engine in a car for a time.
 *
 * @param engine which engine
 * @param car which car
 * @param from when it went in
 * @param to when it came out, or null while it is in
 * @param note oil fresh or kept, cooler cleaned or as it was
 */
public record EngineInCar(
        Id<Engine> engine,
        Id<Car> car,
        Moment from,
        @Nullable Moment to,
        String note) implements Fact {
    public EngineInCar {
        if (to != null && !from.isBefore(to)) {
            throw new IllegalArgumentException("it comes out after it went in");
        }
    }

    @Override
    public Moment happened() {
        return from;
    }
}
