package witnessmark.logbook.engines;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** A figure that can be opened: how much something ran, by a counter, ever or since a moment. */
public sealed interface Figure {
    Counter counter();

    /** From when on it counts, or null for the whole life. */
    @Nullable
    Moment since();

    /** The word people know the engine or part by. */
    String name();

    /** What an engine ran. */
    record OfEngine(
            Entry<Engine> engine, Counter counter, @Nullable Moment since) implements Figure {
        @Override
        public String name() {
            return engine.fact().number();
        }
    }

    /** What a part or set ran. */
    record OfPart(
            Entry<Part> part, Counter counter, @Nullable Moment since) implements Figure {
        @Override
        public String name() {
            return part.fact().mark();
        }
    }
}
