package witnessmark.desktop.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.JComponent;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.LabelledBox;
import witnessmark.desktop.form.NotesBox;
import witnessmark.logbook.sheets.Choice;
import witnessmark.logbook.sheets.FieldKind;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.outcome.Problem;

/** The inputs of a sheet, one for each field, kept in step with the model. */
final class SheetFields {
    private static final int LINES = 6;

    private final SheetModel model;
    private final SheetWords words;
    private final Map<SheetField, LabelledBox> boxes = new LinkedHashMap<>();
    private final Map<SheetField, List<Choice>> shown = new LinkedHashMap<>();
    private boolean showing;

    SheetFields(SheetModel model, SheetWords words) {
        this.model = model;
        this.words = words;
        model.sheet().fields().forEach(field -> boxes.put(field, make(field)));
    }

    LabelledBox box(SheetField field) {
        return Objects.requireNonNull(boxes.get(field));
    }

    JComponent input(SheetField field) {
        return (JComponent) Objects.requireNonNull(box(field).label().getLabelFor());
    }

    /** Shows what stands in the model. */
    void show() {
        showing = true;
        boxes.forEach(this::show);
        showing = false;
    }

    private void show(SheetField field, LabelledBox box) {
        box.setVisible(model.asks(field));
        String text = model.text(field);
        if (box instanceof FieldBox typed && !typed.text().equals(text)) {
            typed.load(text);
        } else if (box instanceof NotesBox lines && !lines.text().equals(text)) {
            lines.load(text);
        } else if (box instanceof ChoiceBox<?>) {
            showChoices(field, text);
        }
        say(field, box, model.line(field));
    }

    @SuppressWarnings("unchecked") // every choice box is made here, of choices
    private void showChoices(SheetField field, String text) {
        ChoiceBox<Choice> box = (ChoiceBox<Choice>) box(field);
        List<Choice> choices = model.asks(field) ? model.choices(field) : List.of();
        Choice chosen = choices.stream()
                .filter(choice -> choice.key().equals(text))
                .findFirst()
                .orElse(null);
        if (!choices.equals(shown.get(field)) || !Objects.equals(box.chosen(), chosen)) {
            shown.put(field, choices);
            box.load(choices, chosen);
        }
    }

    private void say(SheetField field, LabelledBox box, SheetLine line) {
        String said = words.line(field, line);
        Problem problem = line.problem();
        if (problem != null && problem.stops()) {
            box.stop(said);
        } else if (problem != null) {
            box.query(said);
        } else if (line.note().echo()) {
            box.echo(said);
        } else {
            box.note(said);
        }
        String full = words.inFull(field, line);
        if (!full.equals(said)) {
            box.line().setToolTipText(full);
            input(field).getAccessibleContext().setAccessibleDescription(full);
        }
    }

    private LabelledBox make(SheetField field) {
        Caption caption = Caption.of(words.label(field));
        if (field.kind() == FieldKind.CHOICE) {
            ChoiceBox<Choice> box = new ChoiceBox<>(words.texts(), caption, words::choice);
            box.onChange(() -> {
                Choice chosen = box.chosen();
                typed(field, chosen == null ? "" : chosen.key());
            });
            box.notOffered(() -> notOffered(field));
            FormKeys.enterMovesOn(box.combo());
            return box;
        }
        if (field.kind() == FieldKind.LINES) {
            NotesBox box = new NotesBox(caption, LINES);
            box.onChange(() -> typed(field, box.text()));
            box.onLeave(() -> model.leave(field));
            return box;
        }
        FieldBox box = new FieldBox(caption);
        unit(field, box);
        box.onChange(() -> typed(field, box.text()));
        box.onLeave(() -> model.leave(field));
        return box;
    }

    /** What cannot be picked, as it would read in the list, and the sentence that says why. */
    private Map<String, String> notOffered(SheetField field) {
        Map<String, String> said = new LinkedHashMap<>();
        model.notOffered(field).forEach((choice, why) -> said.put(words.choice(choice), words.note(field, why)));
        return said;
    }

    private void unit(SheetField field, FieldBox box) {
        String unit = words.unit(field);
        if (!unit.isEmpty()) {
            box.unit(unit);
        }
    }

    private void typed(SheetField field, String now) {
        if (!showing) {
            model.type(field, now);
        }
    }
}
