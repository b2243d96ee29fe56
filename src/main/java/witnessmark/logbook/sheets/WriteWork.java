package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

/** Writes down a skim or other work on an engine or a part. */
public final class WriteWork implements LogSheet {
    public static final SheetField KIND = choice("work_kind", 1);
    public static final SheetField ON = choice("work_on", 1);
    public static final SheetField WHEN = of("work_day", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("work_time", FieldKind.CLOCK);
    public static final SheetField REMOVED = of("removed", FieldKind.LENGTH);
    public static final SheetField LEFT = of("thickness_left", FieldKind.LENGTH);
    public static final SheetField RESULT = choice("result", 1);
    public static final SheetField BY = text("by", 1);
    public static final SheetField FOUND = text("found", 4);

    private static final Length NOTHING = new Length(0);

    @Override
    public String key() {
        return "write_work";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("work", List.of(KIND, ON, WHEN, WHEN_TIME)),
                SheetGroup.of("work_result", List.of(RESULT, BY, REMOVED, LEFT), List.of(FOUND)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                KIND,
                WorkKind.SKIM.code(),
                RESULT,
                WorkResult.DONE.code(),
                WHEN,
                sight.today().toString());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ON, EngineOrPart.key(engine, head(engine, sight)));
    }

    /** It is the head that is skimmed, and skimming that stands there at first; null when none is fitted. */
    private static @Nullable Id<Part> head(Id<Engine> engine, SheetSight sight) {
        Facts facts = sight.facts();
        return sight.view().ledger().fittedAt(engine, sight.now()).values().stream()
                .map(fitment -> fitment.fact().part())
                .filter(part -> facts.of(PartDesign.class)
                                .get(facts.of(Part.class).get(part).design())
                                .kind()
                        == PartKind.HEAD)
                .findFirst()
                .orElse(null);
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !(field.equals(REMOVED) || field.equals(LEFT))
                || typed.text(KIND).equals(WorkKind.SKIM.code());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(KIND)) {
            return Choice.words(WorkKind.values());
        }
        if (field.equals(RESULT)) {
            return Choice.words(WorkResult.values());
        }
        return field.equals(ON) ? EngineOrPart.choices(sight) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        WorkKind kind = in.word(KIND, WorkKind.class);
        WorkResult result = in.word(RESULT, WorkResult.class);
        Moment when = values.moment(WHEN, WHEN_TIME);
        EngineOrPart on = EngineOrPart.read(in, ON);
        boolean skim = kind == WorkKind.SKIM;
        @Nullable Length removed = skim ? metal(in, values, REMOVED) : null;
        @Nullable Length left = skim ? metal(in, values, LEFT) : null;
        if (!in.fine() || kind == null || result == null || when == null || on == null) {
            return;
        }
        in.make(
                ON,
                new Work(kind, when, on.engineId(), on.partId(), result, removed, left, in.text(BY), in.text(FOUND)));
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof Work work)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, work.kind().code());
        out.put(ON, EngineOrPart.key(work.engine(), work.part()));
        out.put(WHEN, AsText.day(work.at()));
        out.put(WHEN_TIME, AsText.clock(work.at()));
        out.put(REMOVED, AsText.figure(sight.units().length(), work.removed()));
        out.put(LEFT, AsText.figure(sight.units().length(), work.left()));
        out.put(RESULT, work.result().code());
        out.put(BY, work.by());
        out.put(FOUND, work.note());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                EngineOrPart.of(sight, typed.text(ON)).map(EngineOrPart::name).orElse(""));
    }

    /** Metal is more than nothing; empty when nobody measured it. */
    private static @Nullable Length metal(ReadSheet in, ReadValues values, SheetField field) {
        in.note(field, SheetNote.of("if_measured"));
        Length length = values.length(field);
        if (length != null && length.compareTo(NOTHING) <= 0) {
            in.wrong(field, ProblemKind.CANNOT_READ, field, in.text(field), "0.05 mm");
            return null;
        }
        return length;
    }
}
