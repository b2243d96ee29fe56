package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;

/** In which engines something holds: in all, in those of a design, or in one. */
record EngineScope(
        @Nullable Entry<EngineDesign> design, @Nullable Entry<Engine> engine) {
    private static final EngineScope ALL = new EngineScope(null, null);

    /** The only design there is, else all. */
    static String fresh(SheetSight sight) {
        List<Entry<EngineDesign>> designs = sight.facts().of(EngineDesign.class).where(d -> true);
        return designs.size() == 1 ? designs.get(0).id().text() : SheetWord.ALL_DESIGNS.key();
    }

    /** @param one whether one engine can be picked */
    static List<Choice> choices(SheetSight sight, boolean one) {
        List<Choice> choices = new ArrayList<>();
        choices.add(SheetWord.ALL_DESIGNS.choice());
        choices.addAll(sight.all(EngineDesign.class, design -> true));
        if (one) {
            for (Entry<Engine> engine : sight.facts().of(Engine.class).where(e -> true)) {
                choices.add(Choice.of(engine.id().text(), SheetWord.ENGINE, engine.fact()));
            }
        }
        return choices;
    }

    /** What is picked for something written. */
    static String key(@Nullable Id<EngineDesign> design, @Nullable Id<Engine> engine) {
        return engine != null ? engine.text() : design != null ? design.text() : SheetWord.ALL_DESIGNS.key();
    }

    /** What is picked; all when nothing is, which is noted. */
    static EngineScope read(ReadSheet in, SheetField field) {
        String key = in.needed(field);
        if (key.isEmpty() || in.is(field, SheetWord.ALL_DESIGNS)) {
            return ALL;
        }
        EngineScope scope = new EngineScope(
                in.sight().find(EngineDesign.class, key).orElse(null),
                in.sight().find(Engine.class, key).orElse(null));
        if (scope.equals(ALL)) {
            in.wrong(field, ProblemKind.NOT_FOUND, RecordTypes.of(EngineDesign.class), key);
        }
        return scope;
    }

    @Nullable
    Id<EngineDesign> designId() {
        return design == null ? null : design.id();
    }

    @Nullable
    Id<Engine> engineId() {
        return engine == null ? null : engine.id();
    }
}
