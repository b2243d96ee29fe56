package witnessmark.logbook.standing;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;

/**
 * An engine that goes and has nothing recorded that it, or a part in it, could be held against: how it stands is not
 * known.
 *
 * @param engine which engine
 * @param number its number
 * @param car the name of the car it is in, or null
 */
public record EngineWithoutLimit(
        Id<Engine> engine, String number, @Nullable String car) {}
