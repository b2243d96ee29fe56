package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Takes an engine out of a car; nothing goes in. */
public final class TakeEngineOut implements LogSheet {
    public static final SheetField ENGINE = choice("engine_in", 1);
    public static final SheetField WHEN = of("out_when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("out_time", FieldKind.CLOCK);
    /** When it went in, for one that was put in on that day without a time. */
    public static final SheetField PUT_IN_AT = of("put_in_at", FieldKind.CLOCK);

    public static final SheetField NOTE = text("put_note", 4);

    @Override
    public String key() {
        return "take_engine_out";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("take_engine_out", List.of(ENGINE, WHEN, WHEN_TIME, PUT_IN_AT), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return sight.facts().of(EngineInCar.class).where(stay -> stay.engine().equals(engine)).stream()
                .reduce((earlier, later) -> later)
                .map(stay -> Map.of(ENGINE, stay.id().text()))
                .orElse(Map.of());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (!field.equals(ENGINE)) {
            return List.of();
        }
        Moment at = when(typed, sight);
        return sight.facts().of(EngineInCar.class).where(stay -> SameDay.OF_ENGINES.goesOn(stay, at)).stream()
                .map(stay -> Choice.of(
                        stay.id().text(),
                        SheetNote.of(
                                "engine_in_car",
                                sight.name(Engine.class, stay.fact().engine()),
                                sight.name(Car.class, stay.fact().car()))))
                .toList();
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(PUT_IN_AT)
                || sight.find(EngineInCar.class, typed.text(ENGINE))
                        .filter(stay -> SameDay.OF_ENGINES.is(stay.fact(), when(typed, sight)))
                        .isPresent();
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<EngineInCar> stay = in.chosen(ENGINE, EngineInCar.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.blame(WHEN, ProblemKind.CHANGE_INSIDE_RUN, ProblemKind.ENGINE_NOT_IN_CAR);
        if (stay == null || when == null) {
            return;
        }
        String engine = in.sight().name(Engine.class, stay.fact().engine());
        in.note(ENGINE, SheetNote.of("in_since", stay.fact().from()));
        if (SameDay.OF_ENGINES.is(stay.fact(), when)) {
            SameDay.OF_ENGINES.end(in, stay, when, PUT_IN_AT, engine, stands -> ended(stands, when, in.text(NOTE)));
            return;
        }
        if (!stay.fact().from().isBefore(when)) {
            in.wrong(
                    WHEN, ProblemKind.ENDS_BEFORE_IT_BEGINS, engine, stay.fact().from(), when);
        }
        if (in.fine()) {
            in.change(WHEN, stay, ended(stay.fact(), when, in.text(NOTE)));
        }
    }

    /** What was written when it went in stays before what is written now. */
    private static EngineInCar ended(EngineInCar stay, Moment at, String note) {
        String both = stay.note().isEmpty() || note.isEmpty() ? stay.note() + note : stay.note() + "; " + note;
        return new EngineInCar(stay.engine(), stay.car(), stay.from(), at, both);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        Optional<EngineInCar> stay =
                sight.find(EngineInCar.class, typed.text(ENGINE)).map(Entry::fact);
        return List.of(
                stay.map(in -> sight.name(Engine.class, in.engine())).orElse(""),
                stay.map(in -> sight.name(Car.class, in.car())).orElse(""));
    }

    private static Moment when(SheetTyped typed, SheetSight sight) {
        return SheetMoments.of(typed, WHEN, WHEN_TIME, sight).orElse(sight.now());
    }
}
