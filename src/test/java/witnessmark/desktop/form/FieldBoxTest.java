package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTKeyStroke;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

@UiTest
class FieldBoxTest {
    private final FieldBox box = new FieldBox(Caption.of("Highest &rpm"));

    private String outline() {
        return (String) box.field().getClientProperty("JComponent.outline");
    }

    private String told() {
        return box.field().getAccessibleContext().getAccessibleDescription();
    }

    @Test
    void the_label_names_the_field_and_the_unit_is_told_with_it() {
        assertThat(box.label().getLabelFor()).isSameAs(box.field());
        assertThat(box.field().getAccessibleContext().getAccessibleName()).isEqualTo("Highest rpm");
        box.unit("rpm");
        assertThat(box.field().getAccessibleContext().getAccessibleName()).isEqualTo("Highest rpm, rpm");
    }

    @Test
    void each_level_of_the_note_line_has_its_outline_and_is_told_to_screen_readers() {
        box.note("last run 97");
        assertThat(outline()).isNull();
        assertThat(told()).isEqualTo("last run 97");
        box.query("Usual 4.3 to 4.8. Meant 4.5?");
        assertThat(outline()).isEqualTo("warning");
        assertThat(told()).isEqualTo("Usual 4.3 to 4.8. Meant 4.5?");
        assertThat(box.line().getForeground()).isEqualTo(Palette.DUE.colour());
        box.stop("Can't read '1h7x'.");
        assertThat(outline()).isEqualTo("error");
        assertThat(box.line().getForeground()).isEqualTo(Palette.OVER.colour());
        box.echo("= 80 min");
        assertThat(outline()).isNull();
        assertThat(box.line().level()).isEqualTo(NoteLine.Level.ECHO);
        assertThat(box.line().getForeground()).isEqualTo(Palette.INK.colour());
        box.note("");
        assertThat(told()).isNull();
    }

    @Test
    void messages_never_make_the_form_jump_or_grow_wider() {
        Stage.lay(box, 180, box.getPreferredSize().height);
        int height = box.getPreferredSize().height;
        int width = box.getMinimumSize().width;
        box.stop("A message much longer than the field is wide, so that it has to be cut where the column ends");
        assertThat(box.getPreferredSize().height).isEqualTo(height);
        assertThat(box.getMinimumSize().width).isEqualTo(width);
        assertThat(box.line().getToolTipText()).startsWith("A message much longer");
    }

    @Test
    void fields_choices_and_notes_of_one_row_are_equally_high() {
        ChoiceBox<String> choice = new ChoiceBox<>(Texts.in(Locale.UK), Caption.of("Car"), Function.identity());
        choice.load(List.of("41"), "41");
        assertThat(choice.getPreferredSize().height).isEqualTo(box.getPreferredSize().height);
        assertThat(box.field().getPreferredSize().height).isGreaterThanOrEqualTo(30);
    }

    @Test
    void enter_moves_on_like_tab() {
        assertThat(box.field().getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS))
                .contains(
                        AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_ENTER, 0),
                        AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, 0));
    }

    @Test
    void tab_leaves_the_notes_and_enter_does_not() {
        NotesBox notes = new NotesBox(Caption.of("Anything to tell"), 3);
        assertThat(notes.area().getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS))
                .contains(AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, 0))
                .doesNotContain(AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_ENTER, 0));
    }

    @Test
    void a_loaded_value_cannot_be_taken_back_but_typing_can_word_by_word() {
        box.load("8");
        Ui.press(box.field(), Keys.menu(KeyEvent.VK_Z));
        assertThat(box.text()).isEqualTo("8");
        box.field().setCaretPosition(1);
        Ui.type(box.field(), "205 rpm");
        assertThat(box.text()).isEqualTo("8205 rpm");
        Ui.press(box.field(), Keys.menu(KeyEvent.VK_Z));
        assertThat(box.text()).isEqualTo("8205 ");
        Ui.press(box.field(), Keys.menu(KeyEvent.VK_Z));
        assertThat(box.text()).isEqualTo("8");
        Ui.press(box.field(), Keys.menuShift(KeyEvent.VK_Z));
        Ui.press(box.field(), Keys.menu(KeyEvent.VK_Y));
        assertThat(box.text()).isEqualTo("8205 rpm");
    }

    @Test
    void typing_over_a_selection_is_one_step_back() {
        box.load("97");
        box.field().selectAll();
        Ui.type(box.field(), "104");
        assertThat(box.text()).isEqualTo("104");
        box.takeFocus();
        Ui.press(box.field(), Keys.menu(KeyEvent.VK_Z));
        assertThat(box.text()).isEqualTo("97");
        Ui.press(box.field(), Keys.menu(KeyEvent.VK_Y));
        assertThat(box.text()).isEqualTo("104");
    }

    @Test
    void every_change_is_told() {
        List<String> told = new ArrayList<>();
        box.onChange(() -> told.add(box.text()));
        Ui.type(box.field(), "15");
        assertThat(told).containsExactly("1", "15");
    }

    @Test
    void loading_choices_is_not_choosing() {
        ChoiceBox<Integer> choice = new ChoiceBox<>(Texts.in(Locale.UK), Caption.of("Car"), car -> "Car " + car);
        List<Integer> told = new ArrayList<>();
        choice.onChange(() -> told.add(choice.chosen()));
        choice.load(List.of(41, 57), 57);
        assertThat(choice.chosen()).isEqualTo(57);
        choice.choose(41);
        assertThat(told).isEmpty();
        choice.combo().setSelectedItem(57);
        assertThat(told).containsExactly(57);
        choice.load(List.of(), null);
        assertThat(choice.chosen()).isNull();
    }

    /** Said in full under a field of a quarter of the sheet, as a doubt has to be read before it is answered. */
    @Test
    void a_long_doubt_wraps_and_a_long_note_is_cut() {
        FieldBox box = new FieldBox(Caption.of("Running time"));
        Stage.lay(box, 167, 200);
        int one = box.line().getPreferredSize().height;

        box.note("leaves 1 h 21 min 24 s of the running time typed for this run");
        assertThat(box.line().getPreferredSize().height).isEqualTo(one);

        box.query("Usual 1 h 20 min to 1 h 40 min. Meant 1 h 24 min?");
        Stage.lay(box, 167, 200);
        int wrapped = box.line().getPreferredSize().height;
        assertThat(wrapped).isGreaterThan(one);
        assertThat(box.line().getHeight()).isGreaterThanOrEqualTo(wrapped);

        box.query("Right?");
        assertThat(box.line().getPreferredSize().height).isEqualTo(one);
    }
}
