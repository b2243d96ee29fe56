package witnessmark.ledger;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;

/**
 * What a limit may fall on: a part where it sits, or an engine or car as a whole.
 *
 * @param part the part, or null
 * @param partDesign what the part is, or null
 * @param partKind what kind it is, or null
 * @param position where it sits, or null
 * @param engine the engine, or null
 * @param design what the engine is built to, of a part on the shelf the one it was in last; or null
 * @param car the car, or the one the engine is in; or null
 */
record Seat(
        @Nullable Id<Part> part,
        @Nullable Id<PartDesign> partDesign,
        @Nullable PartKind partKind,
        @Nullable Id<Position> position,
        @Nullable Id<Engine> engine,
        @Nullable Id<EngineDesign> design,
        @Nullable Id<Car> car) {}
