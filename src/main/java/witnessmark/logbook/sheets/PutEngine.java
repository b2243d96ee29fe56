package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Puts an engine in a car; the engine before in it comes out at that moment. */
public final class PutEngine implements LogSheet {
    public static final SheetField ENGINE = choice("engine", 1);
    public static final SheetField CAR = choice("car", 1);
    public static final SheetField SINCE = of("since", FieldKind.DAY);
    public static final SheetField SINCE_TIME = of("since_time", FieldKind.CLOCK);
    public static final SheetField NOTE = text("put_note", 4);

    @Override
    public String key() {
        return "put_engine";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("put_engine", List.of(ENGINE, CAR, SINCE, SINCE_TIME), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(SINCE, sight.today().toString());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(ENGINE)
                ? sight.all(Engine.class, engine -> true)
                : field.equals(CAR) ? sight.all(Car.class, car -> true) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Engine> engine = in.chosen(ENGINE, Engine.class);
        Entry<Car> car = in.chosen(CAR, Car.class);
        Moment since = new ReadValues(in).moment(SINCE, SINCE_TIME);
        in.blame(SINCE, ProblemKind.CHANGE_INSIDE_RUN, ProblemKind.ENGINE_NOT_IN_CAR);
        if (engine == null || car == null || since == null) {
            return;
        }
        InCar.inCar(in.sight(), car.id(), since).ifPresent(stay -> {
            if (stay.fact().engine().equals(engine.id())) {
                in.wrong(
                        ENGINE,
                        ProblemKind.ENGINE_IN_TWO_CARS,
                        engine.fact().number(),
                        car.fact().name(),
                        car.fact().name(),
                        stay.fact().from());
            } else {
                in.note(
                        CAR,
                        SheetNote.of(
                                "comes_out",
                                in.sight().name(Engine.class, stay.fact().engine())));
            }
        });
        InCar.ofEngine(in.sight(), engine.id(), since)
                .filter(stay -> !stay.fact().car().equals(car.id()))
                .ifPresent(stay -> in.note(
                        ENGINE,
                        SheetNote.of(
                                "leaves_car",
                                in.sight().name(Car.class, stay.fact().car()))));
        if (in.fine()) {
            InCar.make(in, SINCE, engine.id(), car.id(), since, in.text(NOTE));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                sight.find(Engine.class, typed.text(ENGINE))
                        .map(engine -> engine.fact().number())
                        .orElse(""),
                sight.find(Car.class, typed.text(CAR))
                        .map(car -> car.fact().name())
                        .orElse(""));
    }
}
