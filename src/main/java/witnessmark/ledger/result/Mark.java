package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Position;

/**
 * How a part, an engine or a car stands in one respect, and why.
 *
 * @param state where it stands, what is to come included
 * @param reason why
 * @param part the part, or null when it is an engine or a car as a whole
 * @param engine the engine, or the one the part is in; null when there is none
 * @param car the car, or the one the part is in or its engine is in; null when there is none
 * @param position where the part sits, or null
 * @param canWreck its failure can wreck the engine: not known then weighs as much as over
 * @param runsOut where it runs out, or null when it lasts through the next event and one more like it, or nothing says
 * @param expected what the next event is expected to take of the counter it is held against, or null
 */
public record Mark(
        MarkState state,
        MarkReason reason,
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        @Nullable Id<Position> position,
        boolean canWreck,
        @Nullable RunsOut runsOut,
        @Nullable Expected expected) {
    /** What it weighs in an order of worst first: the less, the worse. */
    public int weight() {
        return (state == MarkState.NOT_KNOWN && canWreck ? MarkState.OVER : state).ordinal();
    }
}
