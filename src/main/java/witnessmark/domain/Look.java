package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * Something a person looked at before a run, ticked with name and time.
 *
 * @param car on which car, or null
 * @param engine on which engine, or null
 * @param what what was looked at
 * @param at when
 * @param by who looked
 * @param words what was seen
 */
public record Look(@Nullable Id<Car> car, @Nullable Id<Engine> engine, String what, Moment at, String by, String words)
        implements Fact {
    public Look {
        if (car == null && engine == null) {
            throw new IllegalArgumentException("a look is at a car or an engine");
        }
        if (what.isBlank()) {
            throw new IllegalArgumentException("a look says at what");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
