package witnessmark.logbook;

import java.util.Optional;
import java.util.function.Function;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;

/** What has a life: an engine or a part. */
public sealed interface Subject {
    record OfEngine(Entry<Engine> engine) implements Subject {}

    record OfPart(Entry<Part> part) implements Subject {}

    /** The engine or part people know by this word. */
    static Optional<Subject> named(Facts facts, String word) {
        Optional<Subject> engine = facts.of(Engine.class).named(word).map(OfEngine::new);
        return engine.isPresent() ? engine : facts.of(Part.class).named(word).map(OfPart::new);
    }

    default String name() {
        return this.<String>fold(
                id -> ((OfEngine) this).engine().fact().number(),
                id -> ((OfPart) this).part().fact().mark());
    }

    default <R> R fold(Function<Id<Engine>, R> engine, Function<Id<Part>, R> part) {
        return this instanceof OfEngine e
                ? engine.apply(e.engine().id())
                : part.apply(((OfPart) this).part().id());
    }
}
