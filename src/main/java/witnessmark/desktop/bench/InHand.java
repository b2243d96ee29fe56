package witnessmark.desktop.bench;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoteLine;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.HowStood;
import witnessmark.domain.Measurement;
import witnessmark.domain.Tool;
import witnessmark.wording.Texts;

/**
 * The field in hand: what and where it is, what was understood, how it was taken, and what holds for what is typed next.
 * Or the same so large that it can be read out to somebody who stands at the engine.
 */
final class InHand {
    private static final String SETTINGS = "cell 0 3, growx, wmin 0";
    private static final String PLAN = "aligny center";

    private final Texts texts;
    private final FigureWords words;
    private final Sheet sheet = new Sheet("fillx, hidemode 3, insets 8 18 6 18", "[0::,grow,fill][]", "");
    private final JPanel lines =
            new JPanel(new FormLayout("insets 0, gap 16 4, fillx, hidemode 3", "[0::,grow,fill]", ""));
    private final Plan plan;
    private final JLabel name = Lettering.cutLine("", Styles.SECTION);
    private final JLabel taken = Lettering.cutLine("", Styles.NOTE);
    private final NoteLine note = new NoteLine().keep(2);
    private final JPanel repeats = new JPanel(new FormLayout("insets 0, gap 8 0"));
    private final JPanel settings = new JPanel(new FormLayout(
            "insets 0, gap 12 0, fillx", "[0:150:,grow,fill][0:170:,grow,fill][92!,fill][0:130:,grow,fill]"));
    private final JLabel farName = Lettering.cutLine("", Styles.FAR_NAME);
    private final JLabel far = Lettering.cutLine("", Styles.FAR);
    private final ChoiceBox<HowStood> stood;
    private final ChoiceBox<String> tool;
    private final FieldBox temperature;
    private final FieldBox by;
    private List<Entry<Tool>> tools = List.of();
    private How shown = How.by("");
    private boolean loading;
    private boolean large;
    private boolean low;

    /**
     * @param unit of a bare temperature
     * @param set told what holds for what is typed next
     */
    InHand(Texts texts, FigureWords words, String unit, Consumer<How> set) {
        this.texts = texts;
        this.words = words;
        stood = new ChoiceBox<>(texts, Caption.of(texts.get("bench.how.stood")), words::stood);
        tool = new ChoiceBox<>(texts, Caption.of(texts.get("bench.how.tool")), this::toolName);
        temperature = new FieldBox(Caption.of(texts.get("bench.how.temperature"))).unit(unit);
        by = new FieldBox(Caption.of(texts.get("bench.how.by")));
        stood.load(List.of(HowStood.values()), HowStood.NOT_SAID);
        stood.onChange(() -> {
            HowStood chosen = stood.chosen();
            set(set, chosen == null ? shown : shown.withStood(chosen));
        });
        tool.onChange(() -> {
            String chosen = tool.chosen();
            set(set, shown.withTool(chosen == null ? "" : chosen));
        });
        temperature.onChange(() -> set(set, shown.withTemperature(temperature.text())));
        by.onChange(() -> set(set, shown.withBy(by.text())));
        repeats.setOpaque(false);
        settings.setOpaque(false);
        settings.add(stood, "wmin 0");
        settings.add(tool, "wmin 0");
        settings.add(temperature, "wmin 0");
        settings.add(by, "wmin 0");
        plan = new Plan(texts, words);
        lines.setOpaque(false);
        lines.add(name, "cell 0 0, split 2, wmin 0, growx");
        lines.add(taken, "cell 0 0, wmin 0, growx 0, shrinkprio 200");
        lines.add(note, "cell 0 1, growx, wmin 0");
        lines.add(repeats, "cell 0 2, wmin 0");
        lines.add(settings, SETTINGS);
        lines.add(farName, "cell 0 4, growx, wmin 0");
        lines.add(far, "cell 0 5, growx, wmin 0");
        sheet.add(lines, "growx, wmin 0, aligny top");
        sheet.add(plan, PLAN);
        sheet.getAccessibleContext().setAccessibleName(texts.get("bench.in_hand"));
        large(false);
    }

    /**
     * Where there is little height, all but the words goes to where it scrolls with the sheet.
     *
     * @param scrolled takes it in
     */
    void low(boolean yes, JPanel scrolled) {
        if (yes == low) {
            return;
        }
        low = yes;
        Component focused =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        scrolled.removeAll();
        if (yes) {
            Sheet apart = new Sheet("fillx, hidemode 3, insets 8 18 6 18", "[0::,grow,fill][]", "");
            apart.add(settings, "growx, wmin 0, aligny center");
            apart.add(plan, PLAN);
            scrolled.add(apart);
        } else {
            lines.add(settings, SETTINGS);
            sheet.add(plan, PLAN);
        }
        if (focused != null && SwingUtilities.isDescendingFrom(focused, settings)) {
            focused.requestFocusInWindow(); // it was taken out on the way
        }
        sheet.revalidate();
        scrolled.revalidate();
    }

    private void set(Consumer<How> told, How how) {
        if (!loading) {
            shown = how;
            told.accept(how);
        }
    }

    private String toolName(String id) {
        return tools.stream()
                .filter(one -> one.id().text().equals(id))
                .findFirst()
                .map(words::tool)
                .orElse(texts.get("bench.how.no_tool"));
    }

    Sheet component() {
        return sheet;
    }

    /** Which tools there are to choose. */
    void tools(List<Entry<Tool>> all) {
        if (!all.equals(tools)) {
            tools = List.copyOf(all);
            List<String> choices = new ArrayList<>(List.of(""));
            tools.forEach(one -> choices.add(one.id().text()));
            tool.load(choices, shown.tool());
        }
    }

    /** An earlier day is only looked at. */
    void editable(boolean yes) {
        stood.combo().setEnabled(yes);
        tool.combo().setEnabled(yes);
        temperature.field().setEditable(yes);
        by.field().setEditable(yes);
    }

    /** Shows the same very large, to be read out, or as usual. */
    void large(boolean yes) {
        large = yes;
        note.keep(yes ? 1 : 2);
        farName.setVisible(yes);
        far.setVisible(yes);
        name.setVisible(!yes);
        taken.setVisible(!yes);
        settings.setVisible(!yes);
        repeats.setVisible(!yes && repeats.getComponentCount() > 0);
        sheet.revalidate();
    }

    boolean isLarge() {
        return large;
    }

    /** No field is in hand yet. */
    void none(How how, @Nullable EngineDesign design) {
        if (design != null) {
            plan.show(design, null);
        }
        name.setText(texts.get("bench.in_hand.none"));
        farName.setText(texts.get("bench.in_hand.none"));
        far.setText(" ");
        taken.setText("");
        note.say(NoteLine.Level.NOTE, texts.get("bench.in_hand.hint"), note);
        load(how);
        repeats(List.of(), earlier -> {});
    }

    /** Shows a field: what is typed there, else what is written. */
    void show(BenchModel model, FigureField field, FigureWords.Say say, Consumer<Entry<Measurement>> count) {
        var place = field.cell().place();
        plan.show(model.page().design(), place);
        name.setText(words.name(place));
        farName.setText(texts.get("bench.far", words.kind(place), words.where(place)));
        far.setText(field.getText().isBlank() ? texts.get("bench.far.none") : words.far(model, place));
        taken.setText(words.taken(model.page(), place, tools));
        note.say(say.level(), say.words(), field);
        load(model.entered(place).map(BenchModel.Entered::how).orElse(model.how()));
        repeats(
                model.page().figures().stream()
                        .filter(entry -> entry.fact().place().equals(place))
                        .toList(),
                count);
    }

    private void load(How how) {
        if (how.equals(shown)) {
            return;
        }
        loading = true;
        shown = how;
        stood.choose(how.stood());
        tool.choose(how.tool());
        load(temperature, how.temperature());
        load(by, how.by());
        loading = false;
    }

    private static void load(FieldBox box, String text) {
        if (!box.text().equals(text)) {
            box.load(text);
        }
    }

    private void repeats(List<Entry<Measurement>> all, Consumer<Entry<Measurement>> count) {
        repeats.removeAll();
        if (all.size() > 1) {
            repeats.add(Lettering.line(texts.get("bench.repeats"), Styles.NOTE));
            for (Entry<Measurement> entry : all) {
                String said = words.repeat(entry.fact());
                JComponent shownAs = entry.fact().inUse()
                        ? Lettering.line(texts.get("bench.repeats.counts", said), Styles.ECHO)
                        : Buttons.link(
                                new Caption(texts.get("bench.repeats.count", said), -1), () -> count.accept(entry));
                repeats.add(shownAs);
            }
        }
        repeats.setVisible(!large && repeats.getComponentCount() > 0);
    }

    /** The temperature cannot be read. */
    void temperature(@Nullable String example) {
        if (example == null) {
            temperature.note("");
        } else {
            temperature.stop(texts.get("bench.say.unreadable", temperature.text(), example));
        }
    }

    Plan plan() {
        return plan;
    }

    FieldBox temperature() {
        return temperature;
    }

    ChoiceBox<HowStood> stood() {
        return stood;
    }
}
