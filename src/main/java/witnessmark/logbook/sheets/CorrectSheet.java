package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import witnessmark.domain.Entry;

/** The sheet of a written entry: the fields of its own form, and why it is corrected. */
public final class CorrectSheet implements LogSheet {
    /** Why it is corrected or struck out. */
    public static final SheetField BECAUSE = SheetField.text("because", 4);

    private final LogSheet form;
    private final Entry<?> entry;

    CorrectSheet(LogSheet form, Entry<?> entry) {
        this.form = form;
        this.entry = entry;
    }

    /** The sheet it is written on. */
    public LogSheet form() {
        return form;
    }

    /** The entry as it was when it was opened. */
    public Entry<?> entry() {
        return entry;
    }

    @Override
    public String key() {
        return "correct";
    }

    @Override
    public List<SheetGroup> groups() {
        List<SheetGroup> groups = new ArrayList<>(form.groups());
        groups.add(SheetGroup.of("because", List.of(BECAUSE)));
        return groups;
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return new HashMap<>(form.written(entry, sight).orElseThrow());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(BECAUSE) ? List.of() : form.choices(field, typed, sight);
    }

    @Override
    public Map<Choice, SheetNote> notOffered(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(BECAUSE) ? Map.of() : form.notOffered(field, typed, sight);
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(BECAUSE) || form.asks(field, typed, sight);
    }

    @Override
    public void read(ReadSheet in) {
        form.read(in);
        in.note(BECAUSE, SheetNote.of("because"));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(BECAUSE));
    }
}
