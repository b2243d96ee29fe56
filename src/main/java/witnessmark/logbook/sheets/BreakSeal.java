package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Seal;
import witnessmark.quantity.Moment;

/** A seal broken or taken off: when, and why. */
public final class BreakSeal implements LogSheet {
    public static final SheetField SEAL = choice("seal", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField WHY = text("why", 4);

    @Override
    public String key() {
        return "break_seal";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("break_seal", List.of(SEAL, WHEN, WHEN_TIME), List.of(WHY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<Seal>> whole = whole(sight);
        return Map.of(
                SEAL,
                whole.size() == 1 ? whole.get(0).id().text() : "",
                WHEN,
                sight.today().toString());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(SEAL)
                ? whole(sight).stream()
                        .map(entry -> Choice.of(
                                entry.id().text(),
                                SheetNote.of(
                                        "seal_on",
                                        entry.fact(),
                                        sight.name(Engine.class, entry.fact().engine()),
                                        entry.fact().owner())))
                        .toList()
                : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        if (whole(in.sight()).isEmpty()) {
            in.note(SEAL, SheetNote.of("no_seal"));
        }
        @Nullable Entry<Seal> entry = in.chosen(SEAL, Seal.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.note(WHY, SheetNote.of("seal_why_example"));
        String why = in.needed(WHY);
        if (entry == null || when == null) {
            return;
        }
        Seal seal = entry.fact();
        in.note(SEAL, SheetNote.of("sealed_since", seal.from()));
        Moment from = Ending.begun(in, WHEN, seal.from(), when);
        if (in.fine() && from != null) {
            in.change(SEAL, entry, new Seal(seal.engine(), seal.number(), seal.owner(), from, when, why, seal.by()));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        Optional<Seal> seal = sight.find(Seal.class, typed.text(SEAL)).map(Entry::fact);
        return List.of(
                seal.map(Seal::number).orElse(""),
                seal.map(each -> sight.name(Engine.class, each.engine())).orElse(""));
    }

    private static List<Entry<Seal>> whole(SheetSight sight) {
        return sight.facts().of(Seal.class).where(seal -> seal.broken() == null);
    }
}
