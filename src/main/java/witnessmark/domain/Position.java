package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * A place where a part sits, in every engine of a design or in one car.
 *
 * @param design the design it belongs to, or null when it is a car's
 * @param car the car it belongs to, or null when it is a design's
 * @param kind what it takes
 * @param name as the crew says it, unique within the design or car
 * @param ordinal its turn when the build is read out
 * @param needed an engine with this position empty is incomplete
 */
public record Position(
        @Nullable Id<EngineDesign> design,
        @Nullable Id<Car> car,
        PartKind kind,
        String name,
        int ordinal,
        boolean needed)
        implements Fact {
    public Position {
        if ((design == null) == (car == null)) {
            throw new IllegalArgumentException("a position belongs to a design or to a car, not both");
        }
    }

    @Override
    public String knownAs() {
        return name;
    }

    @Override
    public @Nullable Id<?> knownWithin() {
        return design != null ? design : car;
    }
}
