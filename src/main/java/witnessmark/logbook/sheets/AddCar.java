package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import witnessmark.domain.Car;
import witnessmark.domain.Id;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;

/** Adds a car, with the usual positions for parts that stay with a car (common practice, no source). */
public final class AddCar implements LogSheet {
    public static final SheetField NAME = text("name", 1);
    public static final SheetField NOTE = text("note", 3);

    private static final List<PartKind> USUAL =
            List.of(PartKind.GEARBOX, PartKind.OIL_COOLER, PartKind.LINES, PartKind.HARNESS, PartKind.HOUR_METER);

    @Override
    public String key() {
        return "add_car";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("car", List.of(NAME, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return List.of();
    }

    @Override
    public void read(ReadSheet in) {
        String name = in.newName(NAME, Car.class);
        if (in.fine()) {
            Id<Car> car = in.make(NAME, new Car(name, in.text(NOTE)));
            int turn = 1;
            for (PartKind kind : USUAL) {
                in.make(NAME, new Position(null, car, kind, kind.code(), turn++, false));
            }
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NAME));
    }
}
