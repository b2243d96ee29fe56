package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Position;
import witnessmark.domain.image.Component;

/** What can be picked where a record refers to another. */
final class RecordChoices {
    private static final SheetField ENGINE = SheetField.choice("engine", 1);
    private static final SheetField CAR = SheetField.choice("car", 1);
    private static final SheetField EVENT = SheetField.choice("event", 1);

    private RecordChoices() {}

    /** Whether it can be shown as a field: all but what refers to an entry without a name. */
    static boolean canOffer(Component component) {
        Class<? extends Fact> kind = component.refersTo();
        return kind == null || named(kind);
    }

    /** Whether people know entries of a kind by a name. */
    private static boolean named(Class<? extends Fact> kind) {
        try {
            return kind.getMethod("knownAs").getDeclaringClass() != Fact.class;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every fact says what it is known as: " + kind, e);
        }
    }

    /** The entries in force that may be meant, the written one among them whatever its standing. */
    static List<Choice> of(Component component, Fact written, SheetTyped typed, SheetSight sight) {
        List<Choice> choices = new ArrayList<>();
        if (component.nullable()) {
            choices.add(SheetWord.NONE.choice());
        }
        Object now = component.value(written);
        for (Entry<?> entry : all(Objects.requireNonNull(component.refersTo()), sight)) {
            boolean same = entry.id().equals(now);
            if (same || (entry.inForce() && fits(entry.fact(), typed, sight))) {
                choices.add(choice(entry, sight));
            }
        }
        return choices;
    }

    private static <F extends Fact> List<Entry<F>> all(Class<F> kind, SheetSight sight) {
        return sight.facts().of(kind).all();
    }

    private static Choice choice(Entry<?> entry, SheetSight sight) {
        String key = entry.id().text();
        if (entry.fact() instanceof Build build) {
            String engine = sight.name(Engine.class, build.engine());
            return Choice.of(key, SheetNote.of("build_opened", engine, build.number(), build.opened()));
        }
        return Choice.of(key, entry.fact());
    }

    /** Positions of the engine or car picked, builds of that engine, runs of that event's timetable. */
    private static boolean fits(Fact fact, SheetTyped typed, SheetSight sight) {
        if (fact instanceof Position position) {
            @Nullable
            Id<EngineDesign> design = sight.find(Engine.class, typed.text(ENGINE))
                    .map(engine -> engine.fact().design())
                    .orElse(null);
            return design != null
                    ? design.equals(position.design())
                    : position.car() != null && position.car().text().equals(typed.text(CAR));
        }
        if (fact instanceof Build build) {
            return build.engine().text().equals(typed.text(ENGINE));
        }
        return !(fact instanceof PlannedRun run) || run.event().text().equals(typed.text(EVENT));
    }
}
