package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import witnessmark.domain.Person;

/** Adds somebody who writes, drives or signs. */
public final class AddPerson implements LogSheet {
    public static final SheetField NAME = text("name", 2);
    public static final SheetField ROLE = text("role", 2);

    @Override
    public String key() {
        return "add_person";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("person", List.of(NAME, ROLE)));
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
        String name = in.newName(NAME, Person.class);
        in.note(ROLE, SheetNote.of("role_example"));
        if (in.fine()) {
            in.make(NAME, new Person(name, in.text(ROLE)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NAME));
    }
}
