package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Look;
import witnessmark.quantity.Moment;

/** Something on a car was looked at before a run: what, when, by whom, and what was seen. */
public final class WriteLook implements LogSheet {
    public static final SheetField CAR = choice("look_car", 1);
    public static final SheetField WHAT = text("look_what", 3);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);
    public static final SheetField SEEN = text("look_seen", 4);

    @Override
    public String key() {
        return "look";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("look", List.of(CAR, WHAT), List.of(SEEN), List.of(WHEN, WHEN_TIME, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        List<Choice> cars = sight.all(Car.class, car -> true);
        if (cars.size() == 1) {
            out.put(CAR, cars.get(0).key());
        }
        out.put(WHEN, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(CAR, WHEN, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(CAR) ? sight.all(Car.class, car -> true) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Car> car = in.chosen(CAR, Car.class);
        in.note(WHAT, SheetNote.of("look_example"));
        String what = in.needed(WHAT);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        if (car != null && when != null && in.fine()) {
            in.make(WHAT, new Look(car.id(), null, what, when, by, in.text(SEEN)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                typed.text(WHAT),
                sight.find(Car.class, typed.text(CAR))
                        .map(car -> car.fact().name())
                        .orElse(""));
    }
}
