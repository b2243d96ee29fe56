package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * A car entered for an event, with the engine meant for it.
 *
 * @param event which event
 * @param car which car
 * @param engine the engine meant for it, or null when open
 */
public record EventEntry(
        Id<Event> event, Id<Car> car, @Nullable Id<Engine> engine) implements Fact {}
