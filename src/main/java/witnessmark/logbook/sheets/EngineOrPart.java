package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;

/** An engine or a part, picked in one field: one of the two. */
record EngineOrPart(
        @Nullable Entry<Engine> engine, @Nullable Entry<Part> part) {
    private static final String ENGINE = "engine:";
    private static final String PART = "part:";

    /** Every engine, then every part. */
    static List<Choice> choices(SheetSight sight) {
        List<Choice> choices = new ArrayList<>(engines(sight));
        for (Entry<Part> part : sight.facts().of(Part.class).where(p -> true)) {
            choices.add(Choice.of(PART + part.id().text(), part.fact()));
        }
        return choices;
    }

    static List<Choice> engines(SheetSight sight) {
        return sight.facts().of(Engine.class).where(e -> true).stream()
                .map(engine -> Choice.of(ENGINE + engine.id().text(), SheetWord.ENGINE, engine.fact()))
                .toList();
    }

    /** What the field holds when the part of this id is picked. */
    static String partKey(String id) {
        return PART + id;
    }

    /** What is picked for something written: the part, else the engine. */
    static String key(@Nullable Id<Engine> engine, @Nullable Id<Part> part) {
        return part != null ? PART + part.text() : engine != null ? ENGINE + engine.text() : "";
    }

    static Optional<EngineOrPart> of(SheetSight sight, String key) {
        if (key.startsWith(ENGINE)) {
            return sight.find(Engine.class, key.substring(ENGINE.length()))
                    .map(engine -> new EngineOrPart(engine, null));
        }
        return key.startsWith(PART)
                ? sight.find(Part.class, key.substring(PART.length())).map(part -> new EngineOrPart(null, part))
                : Optional.empty();
    }

    /** What is picked, or null; it has to be picked, and to be there still. */
    static @Nullable EngineOrPart read(ReadSheet in, SheetField field) {
        String key = in.needed(field);
        Optional<EngineOrPart> found = of(in.sight(), key);
        if (found.isEmpty() && !key.isEmpty()) {
            in.wrong(field, ProblemKind.NOT_FOUND, RecordTypes.of(Part.class), key);
        }
        return found.orElse(null);
    }

    @Nullable
    Id<Engine> engineId() {
        return engine == null ? null : engine.id();
    }

    @Nullable
    Id<Part> partId() {
        return part == null ? null : part.id();
    }

    /** The word people know it by. */
    String name() {
        return engine != null
                ? engine.fact().number()
                : part != null ? part.fact().mark() : "";
    }
}
