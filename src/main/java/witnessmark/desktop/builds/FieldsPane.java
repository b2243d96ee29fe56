package witnessmark.desktop.builds;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.LabelledBox;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.wording.Texts;

/** The fields of one row of a build's page, or of the build as a whole; those not asked for are not seen. */
final class FieldsPane {
    /** How many columns a row of fields has. */
    private static final int COLUMNS = 6;

    private final Told told;
    private final JPanel panel = new JPanel(new FormLayout(
            "insets 0, gap 12 6, fillx, hidemode 3, wrap " + COLUMNS, "[0::,grow,fill,sg s]".repeat(COLUMNS), "[top]"));
    private final Map<Name, LabelledBox> boxes = new LinkedHashMap<>();
    private String row = "";
    private boolean loading;

    /**
     * What is said under a field.
     *
     * @param stop what keeps it from being written; empty for nothing
     * @param query what asks for a second look; empty for nothing
     */
    record Said(String stop, String query) {
        static final Said NOTHING = new Said("", "");
    }

    /** What the fields tell. */
    interface Told {
        void typed(BuildField field, String text);

        /** The focus left a field. */
        void left();

        /** Enter in the last field of a row. */
        void done();
    }

    /** @param spans the fields in order, each with how many columns it takes */
    FieldsPane(Texts texts, Map<Name, Integer> spans, Told told) {
        this.told = told;
        panel.setOpaque(false);
        spans.forEach((name, span) -> {
            Caption caption = Caption.of(texts.get("builds.field." + name.name().toLowerCase(java.util.Locale.ROOT)));
            LabelledBox box = Options.has(name) ? choice(texts, caption, name) : field(caption, name);
            box.setVisible(false);
            boxes.put(name, box);
            panel.add(box, "wmin 0, span " + span);
        });
    }

    private LabelledBox choice(Texts texts, Caption caption, Name name) {
        ChoiceBox<Option> box = new ChoiceBox<>(texts, caption, Option::words);
        FormKeys.bindWithin(box.combo(), Keys.plain(KeyEvent.VK_ENTER), "wm-enter", () -> enter(box.combo()));
        box.onChange(() -> {
            Option chosen = box.chosen();
            tell(name, chosen == null ? "" : chosen.key());
        });
        return box;
    }

    private LabelledBox field(Caption caption, Name name) {
        FieldBox box = new FieldBox(caption);
        box.onChange(() -> tell(name, box.text()));
        box.onLeave(told::left);
        box.onEnter(() -> goOn(box.field()));
        return box;
    }

    /** Enter takes what is marked while a list is open, and goes on when it is not. */
    private void enter(JComboBox<?> combo) {
        Action take = combo.getActionMap().get("enterPressed");
        if (combo.isPopupVisible() && take != null) {
            take.actionPerformed(new ActionEvent(combo, ActionEvent.ACTION_PERFORMED, "enter"));
        } else {
            goOn(combo);
        }
    }

    private void goOn(JComponent from) {
        List<JComponent> seen = boxes.values().stream()
                .filter(LabelledBox::isVisible)
                .map(FieldsPane::input)
                .toList();
        int at = seen.indexOf(from);
        if (at + 1 < seen.size()) {
            seen.get(at + 1).requestFocusInWindow();
        } else {
            told.done();
        }
    }

    private void tell(Name name, String text) {
        if (!loading) {
            told.typed(new BuildField(row, name), text);
        }
    }

    JComponent component() {
        return panel;
    }

    /**
     * Shows what stands in the fields of a row.
     *
     * @param said what is said under a field
     */
    void show(String shown, BuildModel model, Options options, Function<BuildField, Said> said, boolean editable) {
        loading = true;
        row = shown;
        boxes.forEach((name, box) -> {
            BuildField field = new BuildField(shown, name);
            boolean asked = model.asks(field);
            if (box instanceof ChoiceBox<?>) {
                List<Option> all = options.of(model, field);
                asked = asked && (name != Name.MEMBER || all.size() > 1);
                load(choice(box), all, model.text(field));
            } else if (box instanceof FieldBox typed && !typed.text().equals(model.text(field))) {
                typed.load(model.text(field));
            }
            box.setVisible(asked);
            say(box, said.apply(field));
            input(box).setEnabled(editable);
        });
        loading = false;
        panel.revalidate();
    }

    private static void say(LabelledBox box, Said said) {
        if (!said.stop().isEmpty()) {
            box.stop(said.stop());
        } else if (!said.query().isEmpty()) {
            box.query(said.query());
        } else {
            box.note("");
        }
    }

    /** While its list is open it stays as it is: somebody is choosing. */
    private static void load(ChoiceBox<Option> box, List<Option> all, String key) {
        Option chosen = all.stream()
                .filter(option -> option.key().equals(key))
                .findFirst()
                .orElse(null);
        List<Option> there = new ArrayList<>();
        for (int i = 0; i < box.combo().getItemCount(); i++) {
            there.add(box.combo().getItemAt(i));
        }
        if (!there.equals(all)) {
            box.load(all, chosen);
        } else if (!java.util.Objects.equals(box.chosen(), chosen)) {
            box.choose(chosen);
        }
    }

    @SuppressWarnings("unchecked") // every choice here is of options
    private static ChoiceBox<Option> choice(LabelledBox box) {
        return (ChoiceBox<Option>) box;
    }

    private static JComponent input(LabelledBox box) {
        return box instanceof FieldBox typed ? typed.field() : choice(box).combo();
    }

    /** The first field that is seen. */
    Optional<JComponent> first() {
        return boxes.values().stream()
                .filter(LabelledBox::isVisible)
                .map(FieldsPane::input)
                .findFirst();
    }

    /** The input of a field, seen or not; null where the pane has none of that name. */
    @Nullable
    JComponent input(Name name) {
        LabelledBox box = boxes.get(name);
        return box == null ? null : input(box);
    }
}
