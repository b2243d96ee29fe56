package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Seal;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** A seal put on an engine. */
public final class PutSeal implements LogSheet {
    public static final SheetField ENGINE = choice("engine", 1);
    public static final SheetField NUMBER = text("seal_number", 1);
    public static final SheetField OWNER = text("seal_owner", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "put_seal";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("seal", List.of(ENGINE, NUMBER, OWNER), List.of(WHEN, WHEN_TIME, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(ENGINE, OWNER, WHEN, WHEN_TIME, BY);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(ENGINE) ? sight.all(Engine.class, engine -> true) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<Engine> engine = in.chosen(ENGINE, Engine.class);
        in.note(NUMBER, SheetNote.of("seal_number"));
        String number = in.needed(NUMBER);
        in.note(OWNER, SheetNote.of("seal_owner_example"));
        String owner = in.needed(OWNER);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        if (engine == null) {
            return;
        }
        boolean taken = !in.sight()
                .facts()
                .of(Seal.class)
                .where(seal -> seal.engine().equals(engine.id())
                        && Words.plain(seal.number()).equals(Words.plain(number)))
                .isEmpty();
        if (taken) {
            in.wrong(NUMBER, ProblemKind.NAME_TAKEN, RecordTypes.of(Seal.class), number);
        }
        if (in.fine() && when != null) {
            in.make(NUMBER, new Seal(engine.id(), number, owner, when, null, "", in.text(BY)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                typed.text(NUMBER),
                sight.find(Engine.class, typed.text(ENGINE))
                        .map(engine -> engine.fact().number())
                        .orElse(""));
    }
}
