package witnessmark.logbook.standing;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;

/**
 * The last run of a car.
 *
 * @param car which car
 * @param name the car's name
 * @param engine the number of the engine that ran
 * @param event the event's name, or null when it was at none
 * @param run the run
 */
public record LastOut(
        Id<Car> car, String name, String engine, @Nullable String event, Entry<Run> run) {}
