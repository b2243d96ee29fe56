package witnessmark.desktop.runsheet;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.LabelledBox;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NotesBox;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.logbook.run.Choice;
import witnessmark.logbook.run.RunField;

/** The left sheet: every field of a run, in the order people read a dash. It shows the model and tells it of typing. */
final class RunSheetForm extends JPanel {
    private static final String FOUR = "[0:120:,grow,fill,sg f]".repeat(4);

    private final transient RunSheetModel model;
    private final transient RunWords words;
    private final Map<RunField, LabelledBox> boxes = new EnumMap<>(RunField.class);
    private final Map<RunField, List<Named>> choices = new EnumMap<>(RunField.class);
    private transient Consumer<RunField> onLeave = field -> {};
    private @Nullable JCheckBox broke;
    private boolean showing;

    /** The form of a new run, which asks whether something broke. */
    RunSheetForm(RunSheetModel model, RunWords words) {
        this(model, words, null);
    }

    /** @param last what is asked of a written run besides, after its last field; null for a new run */
    RunSheetForm(RunSheetModel model, RunWords words, @Nullable LabelledBox last) {
        super(new java.awt.BorderLayout());
        setOpaque(false);
        this.model = model;
        this.words = words;
        for (RunField field : RunField.values()) {
            boxes.put(field, box(field));
        }
        add(layOut(last));
        FormKeys.bindWithin(
                this, Keys.alt(KeyEvent.VK_ENTER), "wm-take", () -> focused().ifPresent(model::take));
        model.onChange(this::showModel);
        showModel();
    }

    /** What is told, and under it, where its note line would be, the tick that something broke. */
    private JPanel remarksAndBroke() {
        LabelledBox remarks = boxOf(RunField.REMARKS);
        remarks.remove(remarks.line()); // of a run that is new there is nothing to say about what is told
        JCheckBox tick = Buttons.tick(Caption.of(words.texts().get("runsheet.broke")), model::broke);
        tick.setToolTipText(words.texts().get("runsheet.broke.tip"));
        broke = tick;
        JPanel both = new JPanel(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[grow,fill]0[]"));
        both.setOpaque(false);
        both.add(remarks, "grow, wmin 0, wrap");
        both.add(tick, "wmin 0");
        return both;
    }

    /** The tick that says something broke. */
    JCheckBox broke() {
        return Objects.requireNonNull(broke);
    }

    /** Told of the field the focus left, after the model. */
    void onLeave(Consumer<RunField> listener) {
        onLeave = listener;
    }

    /** Whether anything can be typed or picked; what stands there can be read and copied in any case. */
    void editable(boolean yes) {
        boxes.forEach((field, box) -> {
            if (input(field) instanceof JTextComponent text) {
                text.setEditable(yes);
            } else {
                input(field).setEnabled(yes);
            }
        });
    }

    /** Typing so far can no longer be taken back letter by letter. */
    void forgetTyping() {
        showing = true;
        boxes.values().forEach(box -> {
            if (box instanceof FieldBox field) {
                field.load(field.text());
            } else if (box instanceof NotesBox notes) {
                notes.load(notes.text());
            }
        });
        showing = false;
    }

    void focus(RunField field) {
        box(boxes, field).takeFocus();
    }

    JComponent input(RunField field) {
        LabelledBox box = box(boxes, field);
        return (JComponent) Objects.requireNonNull(box.label().getLabelFor());
    }

    LabelledBox boxOf(RunField field) {
        return box(boxes, field);
    }

    /** The field in focus. */
    Optional<RunField> focused() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        return boxes.entrySet().stream()
                .filter(entry -> owner != null && SwingUtilities.isDescendingFrom(owner, entry.getValue()))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private Sheet layOut(@Nullable LabelledBox last) {
        Sheet sheet = new Sheet("fill, novisualpadding, gapy 2, insets 10 18 6 18", FOUR, "");
        section(sheet, "runsheet.which", false);
        sheet.add(boxOf(RunField.CAR), "span 2, aligny top");
        sheet.add(boxOf(RunField.EVENT), "span 2, aligny top, wrap");
        row(sheet, RunField.PLANNED, RunField.DRIVER, RunField.DATE, RunField.OUT_AT);
        section(sheet, "runsheet.how_long", true);
        row(sheet, RunField.RUNNING, RunField.LAPS, RunField.HIGHEST, RunField.OVER_REVS);
        section(sheet, "runsheet.temperatures", true);
        row(sheet, RunField.WATER, RunField.OIL, RunField.OIL_PRESSURE, RunField.OIL_ADDED);
        section(sheet, "runsheet.if_you_have_it", true);
        row(sheet, RunField.WARM_UP, RunField.TRACK, RunField.LOADED, RunField.KNOWN);
        row(sheet, RunField.DISTANCE, RunField.HEAT_CYCLES, RunField.RACE_STARTS, RunField.AMBIENT);
        sheet.add(boxOf(RunField.DRIVER_ASKED), "aligny top");
        if (last == null) {
            sheet.add(remarksAndBroke(), "span 3, grow, pushy, wmin 0");
        } else {
            sheet.add(boxOf(RunField.REMARKS), "span 2, grow, pushy, wmin 0");
            sheet.add(last, "aligny top");
        }
        return sheet;
    }

    private void section(Sheet sheet, String key, boolean apart) {
        sheet.add(Lettering.line(words.texts().get(key), Styles.SECTION), "span, wrap" + (apart ? ", gaptop 4" : ""));
    }

    private void row(Sheet sheet, RunField... fields) {
        for (int i = 0; i < fields.length; i++) {
            sheet.add(boxOf(fields[i]), i == fields.length - 1 ? "aligny top, wrap" : "aligny top");
        }
    }

    private LabelledBox box(RunField field) {
        Caption caption = Caption.of(words.label(field));
        LabelledBox box = field.chosen()
                ? choiceBox(field, caption)
                : field == RunField.REMARKS ? notesBox(field, caption) : fieldBox(field, caption);
        return box;
    }

    private FieldBox fieldBox(RunField field, Caption caption) {
        FieldBox box = new FieldBox(caption);
        String unit = words.unit(field);
        if (!unit.isEmpty()) {
            box.unit(unit);
        }
        box.onChange(() -> typed(field, box.text()));
        box.onLeave(() -> left(field));
        seen(box, box.field());
        if (field == RunField.DATE || field == RunField.OUT_AT) {
            FormKeys.bind(box.field(), Keys.plain(KeyEvent.VK_UP), "later", () -> model.step(field, 1));
            FormKeys.bind(box.field(), Keys.plain(KeyEvent.VK_DOWN), "earlier", () -> model.step(field, -1));
        }
        if (field == RunField.OUT_AT) {
            FormKeys.bind(box.field(), Keys.menu(KeyEvent.VK_SEMICOLON), "now", model::outNow);
        }
        return box;
    }

    private NotesBox notesBox(RunField field, Caption caption) {
        NotesBox box = new NotesBox(caption, 1);
        Styles.as(Styles.SECTION, box.label());
        box.onChange(() -> typed(field, box.text()));
        box.onLeave(() -> left(field));
        seen(box, box.area());
        return box;
    }

    private ChoiceBox<Named> choiceBox(RunField field, Caption caption) {
        ChoiceBox<Named> box = new ChoiceBox<>(words.texts(), caption, Named::words);
        box.onChange(() -> {
            Named chosen = box.chosen();
            typed(field, chosen == null ? "" : chosen.key());
        });
        box.combo().addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    left(field);
                }
            }
        });
        FormKeys.enterMovesOn(box.combo());
        seen(box, box.combo());
        return box;
    }

    private Named named(Choice choice) {
        return new Named(choice.key(), words.choice(choice));
    }

    /** A choice as its list shows it. */
    private record Named(String key, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    /** A field that gets the focus is brought into view. */
    private static void seen(LabelledBox box, JComponent input) {
        input.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                box.scrollRectToVisible(new java.awt.Rectangle(0, 0, box.getWidth(), box.getHeight()));
            }
        });
    }

    private void typed(RunField field, String now) {
        if (!showing) {
            model.type(field, now);
        }
    }

    private void left(RunField field) {
        model.leave(field);
        onLeave.accept(field);
    }

    private void showModel() {
        showing = true;
        for (RunField field : RunField.values()) {
            show(field, boxOf(field));
        }
        JCheckBox tick = broke;
        if (tick != null) {
            tick.setSelected(model.broke());
        }
        showing = false;
    }

    @SuppressWarnings("unchecked") // every box of choices was made here
    private void show(RunField field, LabelledBox box) {
        String text = model.text(field);
        if (box instanceof FieldBox short1 && !short1.text().equals(text)) {
            short1.load(text);
        } else if (box instanceof NotesBox notes && !notes.text().equals(text)) {
            notes.load(text);
        } else if (box instanceof ChoiceBox<?> choice) {
            showChoice(field, (ChoiceBox<Named>) choice, text);
        }
        SayLine.on(box, model.line(field), words::line, words::inFull);
    }

    private void showChoice(RunField field, ChoiceBox<Named> box, String key) {
        List<Named> now = model.choices(field).stream().map(this::named).toList();
        @Nullable
        Named chosen = now.stream()
                .filter(choice -> choice.key().equals(key))
                .findFirst()
                .orElse(null);
        if (!now.equals(choices.get(field))) {
            choices.put(field, now);
            box.load(now, chosen);
        } else if (!Objects.equals(box.chosen(), chosen)) {
            box.choose(chosen);
        }
    }

    private static LabelledBox box(Map<RunField, LabelledBox> boxes, RunField field) {
        return Objects.requireNonNull(boxes.get(field));
    }
}
