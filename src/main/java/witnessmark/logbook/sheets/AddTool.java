package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import witnessmark.domain.Tool;
import witnessmark.domain.ToolKind;

/** A wrench or a gauge, with the mark it is known by. */
public final class AddTool implements LogSheet {
    public static final SheetField MARK = text("mark", 1);
    public static final SheetField KIND = choice("tool_kind", 1);
    public static final SheetField NOTE = text("note", 2);

    @Override
    public String key() {
        return "add_tool";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("tool", List.of(MARK, KIND, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(KIND, ToolKind.TORQUE_WRENCH.code());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(KIND) ? Choice.words(ToolKind.values()) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        in.note(MARK, SheetNote.of("tool_mark_example"));
        String mark = in.newName(MARK, Tool.class);
        ToolKind kind = in.word(KIND, ToolKind.class);
        if (in.fine() && kind != null) {
            in.make(MARK, new Tool(mark, kind, in.text(NOTE), null, ""));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(MARK));
    }
}
