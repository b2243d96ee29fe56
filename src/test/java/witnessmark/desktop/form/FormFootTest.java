package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

@UiTest
class FormFootTest {
    /** As many fields as are named and counted, whatever their number. */
    @ParameterizedTest(name = "{0} fields: {1} named")
    @CsvSource({"1, 1, 0", "3, 3, 0", "4, 4, 0", "5, 3, 2", "10, 3, 7"})
    void the_first_fields_that_need_a_look_are_named_and_the_rest_is_counted(int fields, int named, int rest) {
        Looks.light();
        FormFoot foot = new FormFoot(List.of());
        List<String> gone = new ArrayList<>();
        List<String> all =
                IntStream.range(0, fields).mapToObj(i -> "Field " + i).toList();
        foot.look("look:", more -> "and " + more + " more", all, Function.identity(), gone::add);
        Stage.lay(foot, 900, 120);
        List<AbstractButton> links = Stage.visible(foot).stream()
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .toList();
        assertThat(links).extracting(AbstractButton::getText).isEqualTo(all.subList(0, named));
        assertThat(said(foot).contains("and " + rest + " more")).isEqualTo(rest > 0);
        links.forEach(AbstractButton::doClick);
        assertThat(gone).isEqualTo(all.subList(0, named));
    }

    @Test
    void buttons_without_room_in_one_row_stand_in_two_and_none_is_cut() {
        Looks.light();
        FormFoot foot = new FormFoot(IntStream.range(0, 6)
                .mapToObj(i -> Buttons.plain(Caption.of("Button " + i), () -> {}))
                .toList());
        for (int width : new int[] {900, 400, 900}) {
            Stage.lay(foot, width, 120);
            List<AbstractButton> buttons = Stage.visible(foot).stream()
                    .filter(AbstractButton.class::isInstance)
                    .map(AbstractButton.class::cast)
                    .toList();
            assertThat(buttons).hasSize(6).allSatisfy(button -> {
                assertThat(button.getX() + button.getWidth())
                        .as("a focus ring may reach over the edge")
                        .isLessThanOrEqualTo(button.getParent().getWidth() + 2);
                assertThat(button.getWidth()).isGreaterThanOrEqualTo(button.getPreferredSize().width);
            });
            assertThat(buttons.stream().map(AbstractButton::getY).distinct()).hasSize(width == 900 ? 1 : 2);
        }
    }

    private static List<String> said(FormFoot foot) {
        return Stage.visible(foot).stream()
                .filter(JLabel.class::isInstance)
                .map(label -> ((JLabel) label).getText())
                .toList();
    }

    @Test
    void a_sentence_with_a_very_long_name_is_cut_in_the_middle_and_whole_in_its_tip() {
        Looks.light();
        String sentence = "Car " + "Long name ".repeat(40) + "added.";
        StatusStrip strip = new StatusStrip("What happened last");
        strip.show(sentence, null);
        Stage.lay(strip, 150, 600);
        JTextArea shown = Stage.visible(strip).stream()
                .filter(JTextArea.class::isInstance)
                .map(JTextArea.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(shown.getText()).startsWith("Car Long").endsWith("added.").contains("…");
        assertThat(shown.getText().length()).isLessThanOrEqualTo(301);
        assertThat(shown.getToolTipText()).isEqualTo(sentence);
        assertThat(strip.sentence()).isEqualTo(sentence);
        strip.show("Run saved.", null);
        assertThat(shown.getText()).isEqualTo("Run saved.");
        assertThat(shown.getToolTipText()).isNull();
    }

    @Test
    void a_refusal_is_said_until_something_else_is_typed_and_a_full_disk_until_it_is_asked_again() {
        Refusal refusal = new Refusal();
        refusal.refused(List.of(Problem.of(ProblemKind.NEEDED, "Laps")), problem -> "refused", "12x");
        refusal.typed("12x");
        assertThat(refusal.said()).isEqualTo("refused");
        refusal.typed("12");
        assertThat(refusal.said()).isEmpty();
        refusal.refused(List.of(Problem.of(ProblemKind.DISK_FULL, "disk")), problem -> "full", "12");
        refusal.typed("13");
        assertThat(refusal.said()).isEqualTo("full");
        refusal.none();
        assertThat(refusal.said()).isEmpty();
    }
}
