package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;

/** Adds a position for a part, to every engine of a design or to one car. */
public final class AddPosition implements LogSheet {
    public static final SheetField OF = choice("position_of", 1);
    public static final SheetField KIND = choice("part_kind", 1);
    public static final SheetField NAME = text("name", 1);
    public static final SheetField NEEDED = choice("position_needed", 1);

    private static final String DESIGN = "design:";
    private static final String CAR = "car:";

    @Override
    public String key() {
        return "add_position";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("position", List.of(OF, KIND, NAME, NEEDED)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(NEEDED, SheetWord.NO.key());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(OF);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(KIND)) {
            return Arrays.stream(PartKind.values())
                    .map(kind -> Choice.of(kind.code(), kind))
                    .toList();
        }
        if (field.equals(NEEDED)) {
            return List.of(SheetWord.NO.choice(), SheetWord.YES.choice());
        }
        if (!field.equals(OF)) {
            return List.of();
        }
        List<Choice> choices = new ArrayList<>();
        for (Entry<EngineDesign> design : sight.facts().of(EngineDesign.class).where(d -> true)) {
            choices.add(Choice.of(DESIGN + design.id().text(), design.fact()));
        }
        for (Entry<Car> car : sight.facts().of(Car.class).where(c -> true)) {
            choices.add(Choice.of(CAR + car.id().text(), SheetWord.CAR, car.fact()));
        }
        return choices;
    }

    @Override
    public void read(ReadSheet in) {
        String of = in.needed(OF);
        Optional<Entry<EngineDesign>> design = of.startsWith(DESIGN)
                ? in.sight().find(EngineDesign.class, of.substring(DESIGN.length()))
                : Optional.empty();
        Optional<Entry<Car>> car =
                of.startsWith(CAR) ? in.sight().find(Car.class, of.substring(CAR.length())) : Optional.empty();
        if (!of.isEmpty() && design.isEmpty() && car.isEmpty()) {
            in.wrong(OF, ProblemKind.NOT_FOUND, RecordTypes.of(EngineDesign.class), of);
        }
        @Nullable PartKind kind = in.word(KIND, PartKind.class);
        in.note(NAME, SheetNote.of("position_name"));
        in.note(NEEDED, SheetNote.of("incomplete_without"));
        String typed = in.text(NAME);
        String name = typed.isEmpty() && kind != null ? kind.code() : typed;
        List<Entry<Position>> there = in.sight()
                .facts()
                .of(Position.class)
                .where(position -> design.isPresent()
                        ? design.get().id().equals(position.design())
                        : car.isPresent() && car.get().id().equals(position.car()));
        if (there.stream().anyMatch(position -> position.fact().name().equalsIgnoreCase(name))) {
            in.wrong(NAME, ProblemKind.NAME_TAKEN, RecordTypes.of(Position.class), name);
        }
        if (!in.fine() || kind == null) {
            return;
        }
        int turn = 1
                + there.stream()
                        .mapToInt(position -> position.fact().ordinal())
                        .max()
                        .orElse(0);
        in.make(
                NAME,
                new Position(
                        design.map(Entry::id).orElse(null),
                        car.map(Entry::id).orElse(null),
                        kind,
                        name,
                        turn,
                        in.is(NEEDED, SheetWord.YES)));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NAME).isEmpty() ? typed.text(KIND) : typed.text(NAME));
    }
}
