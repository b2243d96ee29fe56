package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A part in a position for a time.
 *
 * @param part which part or set
 * @param engine in which engine, or null when in a car
 * @param car in which car, or null when in an engine
 * @param position where
 * @param from when it was fitted
 * @param to when it was taken off, or null while it is fitted
 * @param buildIn the build that fitted it, or null
 * @param buildOut the build that took it off, or null
 * @param why why it was taken off
 * @param condition how it looked then
 * @param borrowed it is to go back where it came from
 */
public record Fitment(
        Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        Id<Position> position,
        Moment from,
        @Nullable Moment to,
        @Nullable Id<Build> buildIn,
        @Nullable Id<Build> buildOut,
        String why,
        String condition,
        boolean borrowed)
        implements Fact {
    public Fitment {
        if ((engine == null) == (car == null)) {
            throw new IllegalArgumentException("a part is fitted to an engine or to a car");
        }
        if (to != null && !from.isBefore(to)) {
            throw new IllegalArgumentException("a part is taken off after it was fitted");
        }
    }

    @Override
    public Moment happened() {
        return from;
    }
}
