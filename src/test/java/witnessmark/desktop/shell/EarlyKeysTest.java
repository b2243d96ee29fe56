package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.function.BooleanSupplier;
import javax.swing.JDialog;
import javax.swing.JTextField;
import javax.swing.Timer;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.shell.gallery.Gallery;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** What is typed while the window is up and what fills it is still being worked out. */
@UiTest(display = true)
class EarlyKeysTest {
    private final CountDownLatch filled = new CountDownLatch(1);
    private final CountDownLatch stick = new CountDownLatch(1);
    private Gallery gallery;
    private ShellContext context;
    private ShellFrame frame;
    private String stood;

    @BeforeEach
    void open() {
        gallery = new Gallery(Looks.light(), Texts.in(Locale.UK));
        context = new ShellContext(
                gallery.texts,
                gallery.tasks,
                new MemorySettings(),
                gallery.context.look(),
                new Desk(),
                gallery.context.about(),
                () -> {});
        gallery.tasks.run(
                "filling",
                () -> {
                    filled.await();
                    return 1;
                },
                done -> {},
                failure -> {
                    throw new IllegalStateException(failure);
                });
        frame = new ShellFrame(context, gallery.places(), List.of(), List.of());
        frame.open(PlaceId.RUN_SHEET);
        Focus.await(gallery.sheet.firstFocus());
        stood = field("Running time").getText();
    }

    @AfterEach
    void close() {
        filled.countDown();
        stick.countDown();
        gallery.tasks.awaitIdle();
        frame.dispose();
        gallery.close();
    }

    /** As the system does it: told to the focus manager, wherever the focus is. */
    private static void type(int code, int modifiers, char typed) {
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        Component at = manager.getFocusOwner() != null ? manager.getFocusOwner() : manager.getFocusedWindow();
        long now = System.currentTimeMillis();
        manager.dispatchEvent(new KeyEvent(at, KeyEvent.KEY_PRESSED, now, modifiers, code, typed));
        if (typed != KeyEvent.CHAR_UNDEFINED) {
            manager.dispatchEvent(new KeyEvent(at, KeyEvent.KEY_TYPED, now, modifiers, KeyEvent.VK_UNDEFINED, typed));
        }
        manager.dispatchEvent(new KeyEvent(at, KeyEvent.KEY_RELEASED, now, modifiers, code, typed));
    }

    private static void figures(String text) {
        text.chars().forEach(figure -> type(figure, 0, (char) figure));
    }

    private JTextComponent field(String name) {
        return new Ui(gallery.sheet.component()).field(name);
    }

    private void fill() {
        filled.countDown();
        gallery.tasks.awaitIdle();
    }

    /** Keys are given on one in a round of events: a while after the last, whatever is to come has come. */
    private void settle() {
        for (int round = 0; round < 100; round++) {
            gallery.tasks.awaitIdle();
        }
    }

    @Test
    void letters_and_tab_land_where_they_would_have_once_the_page_is_filled() {
        figures("27");
        type(KeyEvent.VK_TAB, 0, KeyEvent.CHAR_UNDEFINED);
        figures("15");
        assertThat(field("Running time").getText()).isEqualTo(stood);
        assertThat(frame.pane().status().sentence()).startsWith("Still opening. What you type is kept");
        fill();
        settle();
        assertThat(field("Running time").getText()).isEqualTo("27");
        assertThat(field("Laps").getText()).isEqualTo("15");
        assertThat(frame.pane().status().sentence()).isEmpty();
        figures("3");
        assertThat(field("Laps").getText()).as("from now on at once").isEqualTo("153");
    }

    @Test
    void a_command_is_carried_out_and_what_follows_lands_on_the_page_it_leads_to() {
        type(KeyEvent.VK_1, InputEvent.CTRL_DOWN_MASK, KeyEvent.CHAR_UNDEFINED);
        assertThat(frame.pane().current()).contains(Visit.to(PlaceId.RUN_SHEET));
        fill();
        settle();
        assertThat(frame.pane().current()).contains(Visit.to(PlaceId.BEFORE_WE_GO));
    }

    @Test
    void no_key_waits_for_a_slow_stick() {
        frame.dispose();
        gallery.tasks.apart(
                "a copy",
                () -> {
                    stick.await();
                    return 1;
                },
                done -> {},
                failure -> {
                    throw new IllegalStateException(failure);
                });
        frame = new ShellFrame(context, gallery.places(), List.of(), List.of());
        frame.open(PlaceId.RUN_SHEET);
        Focus.await(gallery.sheet.firstFocus());
        figures("27");
        filled.countDown();
        until(() -> field("Running time").getText().equals("27"));
        assertThat(field("Running time").getText()).isEqualTo("27");
    }

    /** Events go on being handled meanwhile, for ten seconds at most. */
    private static void until(BooleanSupplier met) {
        SecondaryLoop loop = Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
        int[] looks = {0};
        Timer looking = new Timer(20, e -> {
            if (met.getAsBoolean() || ++looks[0] > 500) {
                loop.exit();
            }
        });
        looking.start();
        loop.enter();
        looking.stop();
    }

    @Test
    void esc_forgets_what_was_typed() {
        figures("27");
        type(KeyEvent.VK_ESCAPE, 0, KeyEvent.CHAR_UNDEFINED);
        assertThat(frame.pane().status().sentence()).isEmpty();
        figures("4");
        fill();
        settle();
        assertThat(field("Running time").getText()).isEqualTo("4");
    }

    @Test
    void nothing_is_typed_into_a_question_that_came_up_and_that_is_said() {
        figures("27");
        JDialog question = new JDialog(frame);
        JTextField answer = new JTextField(12);
        question.add(answer);
        question.pack();
        question.setVisible(true);
        Focus.await(answer);
        figures("9");
        assertThat(answer.getText()).as("typed there meanwhile").isEqualTo("9");
        fill();
        settle();
        assertThat(answer.getText()).isEqualTo("9");
        assertThat(field("Running time").getText()).isEqualTo(stood);
        assertThat(frame.pane().status().sentence()).startsWith("What was typed while the window was opening");
        question.dispose();
        settle();
        assertThat(field("Running time").getText()).isEqualTo(stood);
    }
}
