package witnessmark.domain;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A signed decision to go past a limit that may be passed, up to a new figure.
 *
 * @param limit the limit that is passed, or null when it is one of readings
 * @param readingLimit the limit of readings that is passed, or null
 * @param part for this part only, or null
 * @param engine for this engine as a whole, or null
 * @param car for this car as a whole, or null
 * @param upTo the new figure in the limit's own count; past a limit of readings, the running of the part or engine at
 *     which it ends, milliseconds
 * @param at when it was signed
 * @param by who signed
 * @param adviser who was asked; empty when nobody was
 * @param advice what the adviser said; empty when nobody was asked
 * @param why why the team goes on
 */
public record RunOn(
        @Nullable Id<Limit> limit,
        @Nullable Id<ReadingLimit> readingLimit,
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        long upTo,
        Moment at,
        String by,
        String adviser,
        String advice,
        String why)
        implements Fact {
    public RunOn {
        if ((limit == null) == (readingLimit == null)) {
            throw new IllegalArgumentException("one limit is passed");
        }
        if (Stream.of(part, engine, car).filter(subject -> subject != null).count() != 1) {
            throw new IllegalArgumentException("a part goes on, or an engine, or a car");
        }
        if (upTo <= 0) {
            throw new IllegalArgumentException("the new figure is more than 0");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }
}
