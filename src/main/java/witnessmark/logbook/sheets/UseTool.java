package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Tool;

/** Takes a tool out of use, or back into it. */
public final class UseTool implements LogSheet {
    public static final SheetField TOOL = choice("tool", 2);
    public static final SheetField NOW = choice("tool_now", 1);
    public static final SheetField DAY = of("day", FieldKind.DAY);
    public static final SheetField WHY = text("why", 4);

    @Override
    public String key() {
        return "use_tool";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("use_tool", List.of(TOOL, NOW, DAY), List.of(WHY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(NOW, SheetWord.OUT_OF_USE.key(), DAY, sight.today().toString());
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(TOOL) || field.equals(NOW) || typed.is(NOW, SheetWord.OUT_OF_USE);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "tool" -> ToolsNow.choices(sight);
            case "tool_now" -> List.of(SheetWord.OUT_OF_USE.choice(), SheetWord.BACK_IN_USE.choice());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<Tool> tool = in.chosen(TOOL, Tool.class);
        boolean out = in.is(NOW, SheetWord.OUT_OF_USE);
        in.note(NOW, out ? SheetNote.NONE : SheetNote.of("calibrate_first"));
        LocalDate day = out ? new ReadValues(in).neededDay(DAY) : null;
        in.note(WHY, SheetNote.of("tool_why_example"));
        String why = out ? in.needed(WHY) : "";
        if (tool == null) {
            return;
        }
        in.note(
                TOOL,
                ToolsNow.tightened(in.sight(), tool, day == null ? in.sight().today() : day));
        if (in.fine()) {
            Tool fact = tool.fact();
            in.change(TOOL, tool, new Tool(fact.mark(), fact.kind(), fact.note(), day, why));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(ToolsNow.name(sight, typed.text(TOOL)));
    }
}
