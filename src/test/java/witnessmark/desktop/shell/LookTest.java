package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.util.UIScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

@UiTest
class LookTest {
    @Test
    void words_in_a_state_keep_its_colour_through_dark_and_back() {
        Look look = Looks.light();
        List<JLabel> labels = new ArrayList<>();
        for (SeamState state : SeamState.values()) {
            labels.add(Lettering.line("x", state.style()));
        }
        JLabel note = Lettering.line("x", Styles.NOTE);
        for (Theme theme : List.of(Theme.DARK, Theme.LIGHT)) {
            look.use(theme);
            labels.forEach(SwingUtilities::updateComponentTreeUI);
            SwingUtilities.updateComponentTreeUI(note);
            for (SeamState state : SeamState.values()) {
                assertThat(labels.get(List.of(SeamState.values()).indexOf(state))
                                .getForeground())
                        .as(theme + " " + state)
                        .isEqualTo(state.ink().colour());
            }
            assertThat(note.getForeground()).isEqualTo(Palette.INK2.colour());
        }
    }

    @Test
    void enter_presses_the_button_in_hand_in_both_themes() {
        Look look = Looks.light();
        for (Theme theme : List.of(Theme.LIGHT, Theme.DARK)) {
            look.use(theme);
            JButton button = new JButton("Keep it");
            assertThat(button.getInputMap().get(KeyStroke.getKeyStroke("ENTER")))
                    .as("%s", theme)
                    .isEqualTo("pressed");
            assertThat(button.getInputMap().get(KeyStroke.getKeyStroke("released ENTER")))
                    .isEqualTo("released");
        }
    }

    @Test
    void help_that_is_asked_for_after_a_change_of_theme_is_in_that_theme() {
        Look look = Looks.light();
        Texts texts = Texts.in(Locale.UK);
        HelpPane help = new HelpPane(texts, () -> {});
        for (Theme theme : List.of(Theme.DARK, Theme.LIGHT)) {
            look.use(theme);
            help.show(List.of(theme == Theme.DARK ? "help.photos" : "help.traces"));
            JButton fresh = Buttons.link(Caption.of(texts.get("shell.help.close")), () -> {});
            assertThat(help.firstFocus().getForeground()).as("%s", theme).isEqualTo(fresh.getForeground());
        }
    }

    @Test
    void the_theme_chosen_is_in_force_and_remembered() {
        MemorySettings settings = new MemorySettings();
        Look look = new Look(settings);
        look.install(false);
        assertThat(FlatLaf.isLafDark()).as("the system is light").isFalse();
        look.use(Theme.DARK);
        assertThat(FlatLaf.isLafDark()).isTrue();
        Look next = new Look(settings);
        next.install(false);
        assertThat(next.theme()).isEqualTo(Theme.DARK);
        assertThat(FlatLaf.isLafDark()).isTrue();
    }

    @Test
    void same_as_system_follows_the_system_and_a_choice_does_not() {
        Look look = new Look(new MemorySettings());
        look.install(true);
        assertThat(FlatLaf.isLafDark()).isTrue();
        look.systemIsDark(false);
        assertThat(FlatLaf.isLafDark()).isFalse();
        look.use(Theme.LIGHT);
        look.systemIsDark(true);
        assertThat(FlatLaf.isLafDark()).isFalse();
    }

    @Test
    void listeners_are_told_of_theme_and_size() {
        Look look = Looks.light();
        List<String> told = new ArrayList<>();
        look.onChange(() -> told.add(look.theme() + " " + look.zoom()));
        look.use(Theme.DARK);
        look.larger();
        look.zoom(1.0f);
        assertThat(told).containsExactly("DARK 1.0", "DARK 1.1", "DARK 1.0");
    }

    @ParameterizedTest(name = "zoom {0}")
    @ValueSource(floats = {1.0f, 1.1f, 1.25f, 1.5f, 1.75f, 2.0f})
    void text_gaps_and_painters_grow_by_the_same_factor(float zoom) {
        Looks.look(Theme.LIGHT, zoom);
        assertThat(UIScale.getUserScaleFactor()).isEqualTo(zoom);
        assertThat(UIManager.getFont("defaultFont").getSize()).isEqualTo(Math.round(13 * zoom));
        assertThat(Lettering.line("x", Styles.TITLE).getFont().getSize()).isEqualTo(Math.round(24 * zoom));
        JPanel panel = new JPanel(new FormLayout("insets 0, gap 0"));
        JLabel label = new JLabel("x");
        panel.add(label, "gapleft 100, w 200!, h 40!");
        Stage.lay(panel, 1000, 200);
        assertThat(label.getX()).isEqualTo(Math.round(100 * zoom));
        assertThat(label.getWidth()).isEqualTo(Math.round(200 * zoom));
    }

    @Test
    void no_text_is_smaller_than_12_at_normal_size() {
        Looks.light();
        for (String style : List.of(Styles.NOTE, Styles.ECHO, Styles.QUERY, Styles.STOP, Styles.RAIL_GROUP)) {
            assertThat(Lettering.line("x", style).getFont().getSize()).as(style).isGreaterThanOrEqualTo(12);
        }
        assertThat(new JTextField().getFont().getSize()).isGreaterThanOrEqualTo(13);
        assertThat(new JButton("x").getFont().getSize()).isEqualTo(13);
    }

    @Test
    void titles_are_set_in_the_bundled_bold_face_and_not_another_of_its_family() {
        Looks.light();
        assertThat(Lettering.line("x", Styles.TITLE).getFont().getFontName()).isEqualTo(Fonts.TITLE_FACE);
        assertThat(Lettering.line("x", Styles.BOARD_TITLE).getFont().getFontName())
                .isEqualTo(Fonts.TITLE_FACE);
    }

    @Test
    void the_digits_of_text_are_all_equally_wide() {
        Looks.light();
        JLabel label = Lettering.line("x", Styles.FIELD_LABEL);
        int zero = label.getFontMetrics(label.getFont()).charWidth('0');
        for (char digit = '1'; digit <= '9'; digit++) {
            assertThat(label.getFontMetrics(label.getFont()).charWidth(digit)).isEqualTo(zero);
        }
        assertThat(label.getFont().getFamily()).startsWith("Roboto");
    }

    @Test
    void every_style_class_is_defined_in_the_themes() throws IllegalAccessException {
        Looks.light();
        for (var field : Styles.class.getFields()) {
            String style = (String) field.get(null);
            boolean defined = List.of("", "Button", "TextField", "Table", "ScrollPane").stream()
                    .anyMatch(type -> UIManager.get("[style]" + type + "." + style) != null);
            assertThat(defined).as(style).isTrue();
        }
        for (SeamState state : SeamState.values()) {
            assertThat(UIManager.get("[style]." + state.style()))
                    .as(state.style())
                    .isNotNull();
        }
    }

    @Test
    void larger_and_smaller_stop_at_the_ends() {
        assertThat(Zoom.larger(2.0f)).isEqualTo(2.0f);
        assertThat(Zoom.smaller(1.0f)).isEqualTo(1.0f);
        for (int i = 0; i + 1 < Zoom.STEPS.size(); i++) {
            assertThat(Zoom.larger(Zoom.STEPS.get(i))).isEqualTo(Zoom.STEPS.get(i + 1));
            assertThat(Zoom.smaller(Zoom.STEPS.get(i + 1))).isEqualTo(Zoom.STEPS.get(i));
        }
        assertThat(Zoom.read("nonsense")).isEqualTo(1.0f);
        assertThat(Zoom.read("9")).isEqualTo(1.0f);
        assertThat(Zoom.read("1.25")).isEqualTo(1.25f);
    }
}
