package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.shell.gallery.Gallery;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.TabWalk;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** What only a real window can show. */
@UiTest(display = true)
class ShellFrameTest {
    private final MemorySettings settings = new MemorySettings();
    private Gallery gallery;
    private Desk desk;

    @BeforeEach
    void prepare() {
        gallery = new Gallery(Looks.light(), Texts.in(Locale.UK));
        desk = new Desk();
    }

    @AfterEach
    void close() {
        gallery.close();
    }

    private record Step(int by, Component to) {}

    private ShellFrame frame() {
        ShellContext context = new ShellContext(
                gallery.texts,
                gallery.tasks,
                settings,
                gallery.context.look(),
                desk,
                gallery.context.about(),
                () -> {});
        return new ShellFrame(context, gallery.places(), List.of(), List.of());
    }

    @Test
    void tab_goes_round_the_form_once_in_reading_order_without_a_trap() {
        ShellFrame frame = frame();
        frame.open(PlaceId.RUN_SHEET);
        List<Component> visited = TabWalk.from(gallery.sheet.firstFocus());
        assertThat(new HashSet<>(visited)).as("each once").hasSameSizeAs(visited);
        List<String> names = TabWalk.namesFrom(gallery.sheet.firstFocus());
        assertThat(names)
                .containsSubsequence(
                        "Running time",
                        "Laps",
                        "Highest rpm, rpm",
                        "Over-revs",
                        "Water, highest, \u00b0C",
                        "Oil, highest, \u00b0C",
                        "Oil pressure, lowest hot, bar",
                        "Oil added, L",
                        "Anything to tell",
                        "Clear sheet",
                        "Save, next car",
                        "Save run",
                        "Places");
        Set<Component> all = new HashSet<>(visited);
        for (Component component : Stage.visible(frame.getContentPane())) {
            if (component instanceof javax.swing.text.JTextComponent text && text.isFocusable() && text.isEnabled()) {
                assertThat(all)
                        .as(text.getAccessibleContext().getAccessibleName())
                        .contains(text);
            }
        }
        frame.dispose();
    }

    @Test
    void the_window_comes_back_where_it_stood_and_on_the_page_it_showed() {
        ShellFrame first = frame();
        first.open(PlaceId.BEFORE_WE_GO);
        desk.go(PlaceId.ENGINES);
        Rectangle moved = new Rectangle(40, 30, 1000, 640);
        for (int i = 0; i < 5 && !first.getBounds().equals(moved); i++) {
            first.setBounds(moved); // again where the system still had it stand elsewhere
            awaitBounds(first, moved);
        }
        first.keepState();
        first.dispose();
        desk = new Desk();
        ShellFrame second = frame();
        second.open(PlaceId.BEFORE_WE_GO);
        awaitBounds(second, moved);
        assertThat(second.getBounds()).isEqualTo(moved);
        assertThat(second.pane().current()).contains(Visit.to(PlaceId.ENGINES));
        second.dispose();
    }

    /** The system places a window in its own time, and says where it stands after it was asked to stand elsewhere. */
    private static void awaitBounds(ShellFrame frame, Rectangle wanted) {
        SecondaryLoop loop = Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
        int[] left = {20};
        Timer look = new Timer(100, e -> {
            if (frame.getBounds().equals(wanted) || left[0]-- == 0) {
                loop.exit();
            }
        });
        look.start();
        loop.enter();
        look.stop();
    }

    @Test
    void a_page_of_another_version_is_not_missed() {
        settings.put("window.place", "SEASON_LEDGER");
        ShellFrame frame = frame();
        frame.open(PlaceId.RUN_SHEET);
        assertThat(frame.pane().current()).contains(Visit.to(PlaceId.RUN_SHEET));
        frame.dispose();
    }

    @Test
    void switching_theme_in_an_open_window_keeps_page_and_what_is_typed() {
        ShellFrame frame = frame();
        frame.open(PlaceId.RUN_SHEET);
        Component page = gallery.sheet.component();
        gallery.context.look().use(Theme.DARK);
        assertThat(frame.pane().current()).contains(Visit.to(PlaceId.RUN_SHEET));
        assertThat(page.isShowing()).isTrue();
        assertThat(frame.getContentPane().getBackground()).isEqualTo(witnessmark.desktop.form.Palette.BENCH.colour());
        gallery.context.look().zoom(1.5f);
        gallery.context.look().zoom(1.0f);
        gallery.tasks.awaitIdle();
        frame.dispose();
    }

    @Test
    void who_comes_back_to_a_place_is_where_he_was_in_it() {
        ShellFrame frame = frame();
        frame.open(PlaceId.RUN_SHEET);
        Focus.await(gallery.sheet.firstFocus());
        JComponent laps = (JComponent) new Ui(gallery.sheet.component()).field("Laps");
        laps.requestFocusInWindow();
        Focus.await(laps);
        desk.go(PlaceId.BEFORE_WE_GO);
        assertThat(laps.isShowing()).isFalse();
        desk.go(PlaceId.RUN_SHEET);
        Focus.await(laps);
        frame.dispose();
    }

    @Test
    void esc_closes_the_help_before_it_leaves_the_page_and_the_focus_stays() {
        ShellFrame frame = frame();
        frame.open(PlaceId.RUN_SHEET);
        Focus.await(gallery.sheet.firstFocus());
        JComponent laps = (JComponent) new Ui(gallery.sheet.component()).field("Laps");
        laps.requestFocusInWindow();
        Focus.await(laps);
        gallery.tasks.awaitIdle(); // a key pressed before the window is filled is kept until it is
        frame.pane().toggleHelp();
        KeyEvent escape = new KeyEvent(laps, KeyEvent.KEY_PRESSED, 0L, 0, KeyEvent.VK_ESCAPE, KeyEvent.CHAR_UNDEFINED);
        KeyboardFocusManager.getCurrentKeyboardFocusManager().dispatchEvent(escape);
        gallery.tasks.awaitIdle(); // kept or not, it has come to where it was meant by now
        assertThat(frame.pane().helpShown()).isFalse();
        assertThat(frame.pane().current()).contains(Visit.to(PlaceId.RUN_SHEET));
        Focus.await(laps);
        frame.dispose();
    }

    @Test
    void f6_goes_round_places_page_and_find_and_back() {
        ShellFrame frame = frame();
        frame.open(PlaceId.RUN_SHEET);
        Focus.await(gallery.sheet.firstFocus());
        for (Step step : List.of(
                new Step(1, frame.pane().findField()),
                new Step(1, frame.pane().rail().places()),
                new Step(1, gallery.sheet.firstFocus()),
                new Step(-1, frame.pane().rail().places()))) {
            frame.pane().nextPane(step.by());
            Focus.await(step.to());
        }
        frame.dispose();
    }

    @Test
    void the_focus_is_in_the_first_field_of_the_page_opened() {
        ShellFrame frame = frame();
        frame.open(PlaceId.RUN_SHEET);
        Focus.await(gallery.sheet.firstFocus());
        assertThat(SwingUtilities.getWindowAncestor(gallery.sheet.firstFocus())).isSameAs(frame);
        frame.dispose();
    }
}
