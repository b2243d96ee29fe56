package witnessmark.desktop.traces;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JCheckBox;
import javax.swing.JFrame;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.trace.LoggerFiles;
import witnessmark.wording.Texts;

/** A trace brought in with nothing but keys, in a real window. */
@UiTest(display = true)
class TraceByKeyboardTest {
    private static final int MENU = InputEvent.CTRL_DOWN_MASK;

    @TempDir
    Path folder;

    private final JFrame frame = new JFrame();
    private TraceWindow window;
    private Keyboard keys;

    @BeforeEach
    void show() throws IOException {
        window = new TraceWindow(folder, Looks.light(), Texts.in(Locale.UK));
        keys = new Keyboard(window.tasks::awaitIdle);
        frame.setContentPane(window.pane);
        frame.setJMenuBar(window.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        frame.validate();
    }

    @AfterEach
    void close() {
        frame.dispose();
        window.close();
    }

    @Test
    void from_anywhere_to_the_run_that_is_measured_and_back() throws IOException {
        window.chosen = window.file("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        keys.press(KeyEvent.VK_T, MENU);
        Focus.await(window.page.panel().chooseButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(window.page.forRun().run().combo());
        keys.press(KeyEvent.VK_TAB);
        assertThat(Keyboard.owner()).isInstanceOf(JCheckBox.class);
        keys.press(KeyEvent.VK_SPACE);
        assertThat(window.page.model().taken()).doesNotContain(TraceField.START);
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(window.traces()).hasSize(1);

        keys.press(KeyEvent.VK_Z, MENU);
        assertThat(window.traces()).isEmpty();
    }

    @Test
    void once_a_file_is_in_the_logbook_the_next_is_asked_for() throws IOException {
        window.chosen = window.file("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        keys.press(KeyEvent.VK_T, MENU);
        Focus.await(window.page.panel().chooseButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(window.page.forRun().run().combo());
        keys.press(KeyEvent.VK_T, MENU);
        assertThat(window.page.model().file()).as("still in hand").startsWith("2026-05-03");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(window.traces()).hasSize(1);

        window.chosen = window.file("2026-05-23_57_p1.csv", LoggerFiles.spike());
        keys.press(KeyEvent.VK_T, MENU);
        assertThat(window.page.model().file()).startsWith("2026-05-23");
    }

    @Test
    void what_is_asked_has_the_focus_and_enter_answers_it() throws IOException {
        StringBuilder text = new StringBuilder();
        LoggerFiles.spike()
                .lines()
                .forEach(line ->
                        text.append(line.substring(line.indexOf(',') + 1)).append('\n'));
        window.chosen = window.file("2026-05-23_57_p1.csv", text.toString());
        keys.press(KeyEvent.VK_T, MENU);
        Focus.await(window.page.panel().chooseButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(window.page.firstFocus());
        keys.type("20").press(KeyEvent.VK_ENTER);
        assertThat(window.page.model().isRead()).isTrue();
        Focus.await(window.page.forRun().run().combo());
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(window.traces()).hasSize(1);
    }

    /** While the file is read again its pane is out of sight: the focus comes back to where it was said. */
    @Test
    void samples_a_second_are_said_by_enter_and_the_next_key_brings_the_trace_in() throws IOException {
        window.open("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        JTextComponent rate = rate();
        keys.type("20").press(KeyEvent.VK_ENTER);
        Focus.await(rate);
        assertThat(rate.getText()).isEqualTo("20");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(window.traces()).hasSize(1);
    }

    @Test
    void samples_a_second_that_are_being_typed_stay_while_the_logbook_changes_and_leaving_the_field_says_them()
            throws IOException {
        window.open("2026-07-05_57_race2.csv", LoggerFiles.wrongTimeBase());
        JTextComponent rate = rate();
        keys.type("20");
        window.page.changed();
        window.tasks.awaitIdle();
        assertThat(rate.getText()).isEqualTo("20");
        keys.press(KeyEvent.VK_TAB);
        assertThat(window.page.model().proposal().orElseThrow().stops()).isFalse();
    }

    private JTextComponent rate() {
        Focus.await(window.page.forRun().run().combo());
        window.page.panel().showRead();
        JTextComponent rate = new Ui(window.page.panel()).field("Or so many samples a second");
        rate.requestFocusInWindow();
        Focus.await(rate);
        return rate;
    }

    @Test
    void escape_leaves_the_page_and_it_is_there_again_as_it_was() throws IOException {
        window.open("2026-05-03_41_race1.csv", LoggerFiles.mechanicalOverRev());
        Focus.await(window.page.forRun().run().combo());
        keys.press(KeyEvent.VK_ESCAPE);
        assertThat(window.page.panel().isShowing()).isFalse();
        keys.press(KeyEvent.VK_T, MENU);
        assertThat(window.page.panel().isShowing()).isTrue();
        assertThat(window.page.model().isRead()).isTrue();
        Focus.await(window.page.forRun().run().combo());
    }
}
