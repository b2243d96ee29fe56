package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * Something outside its limit or its specification, signed as accepted as it is.
 *
 * @param engine on which engine, or null
 * @param car on which car, or null
 * @param build in which build, or null
 * @param part which part, or null
 * @param at when it was signed
 * @param what what is outside
 * @param why why it is accepted
 * @param by who signed
 * @param kind which figure of the build sheet it is about, or null
 * @param number at which cylinder or main bearing; null for all of them, or the engine's one
 */
public record Concession(
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        @Nullable Id<Build> build,
        @Nullable Id<Part> part,
        Moment at,
        String what,
        String why,
        String by,
        @AddedLater @Nullable MeasureKind kind,
        @AddedLater @Nullable Integer number)
        implements Fact {
    public Concession {
        if (engine == null && car == null && part == null) {
            throw new IllegalArgumentException("a concession names what it is for");
        }
        if (kind == null && number != null) {
            throw new IllegalArgumentException("a place is a figure's");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
