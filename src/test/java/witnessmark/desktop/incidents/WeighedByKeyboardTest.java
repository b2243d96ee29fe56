package witnessmark.desktop.incidents;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextField;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Speaks;
import witnessmark.domain.Weighing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;

/** Findings of the repeated big-end failure weighed against its causes in a real window, with nothing but keys. */
@UiTest(display = true)
class WeighedByKeyboardTest {
    private final JFrame frame = new JFrame();
    private final Desk desk = SampleBook.on(SampleBook.OPENING);

    private IncidentsWindow window;
    private Keyboard keys;
    private JComponent table;

    @BeforeEach
    void show() {
        window = new IncidentsWindow(Looks.light(), IncidentsWindow.english(), desk.view(), desk);
        frame.setContentPane(window.pane);
        frame.setJMenuBar(window.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        window.reads(desk::view);
        keys = new Keyboard(window.tasks::awaitIdle);
        table = (JComponent) Stage.visible(window.place.panel()).stream()
                .filter(each -> "Findings against causes"
                        .equals(
                                each.getAccessibleContext() == null
                                        ? ""
                                        : each.getAccessibleContext().getAccessibleName()))
                .filter(each -> each.isFocusable() && ((JComponent) each).getComponentCount() == 0)
                .filter(each -> !(each instanceof javax.swing.JLabel))
                .findFirst()
                .orElseThrow();
        table.requestFocusInWindow();
        Focus.await(table);
    }

    @AfterEach
    void close() {
        frame.dispose();
        window.close();
    }

    private String inHand() {
        return table.getAccessibleContext().getAccessibleDescription();
    }

    private List<Entry<Weighing>> weighings() {
        return desk.view().facts().of(Weighing.class).all();
    }

    private Weighing last() {
        List<Entry<Weighing>> all = weighings();
        return all.get(all.size() - 1).fact();
    }

    @Test
    void plus_and_minus_weigh_once_more_strongly_and_delete_takes_it_away_each_as_one_change() {
        int before = weighings().size();
        assertThat(inHand()).contains("Seen is not weighed against 1, debris of the first failure");
        keys.press(KeyEvent.VK_DOWN)
                .press(KeyEvent.VK_DOWN)
                .press(KeyEvent.VK_DOWN)
                .press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_DOWN).press(KeyEvent.VK_RIGHT);
        assertThat(inHand()).contains("Crank pin 3 is not weighed against 2, housing of rod 3 lost its grip");

        keys.type("+");
        assertThat(weighings()).hasSize(before + 1);
        assertThat(last().speaks()).isEqualTo(Speaks.FOR);
        Focus.await(table);
        assertThat(table.isFocusOwner()).isTrue();
        keys.press(KeyEvent.VK_LEFT).press(KeyEvent.VK_RIGHT);
        assertThat(inHand()).contains("Crank pin 3 speaks for 2");
        keys.type("+");
        assertThat(last().speaks()).isEqualTo(Speaks.STRONGLY_FOR);
        keys.type("-");
        assertThat(last().speaks()).isEqualTo(Speaks.AGAINST);
        keys.type("0");
        assertThat(last().speaks()).isEqualTo(Speaks.NEITHER);
        keys.press(KeyEvent.VK_DELETE);
        assertThat(desk.view().facts().of(Weighing.class).where(each -> true)).hasSize(before);

        desk.undo().orThrow();
        desk.undo().orThrow();
        assertThat(last().speaks()).as("what was taken back twice").isEqualTo(Speaks.AGAINST);
    }

    /** Between two keys nothing is read anew: the second goes by what the first wrote, not by what is shown. */
    @Test
    void keys_typed_quickly_each_count() {
        int before = weighings().size();
        keys.type("++");
        assertThat(last().speaks()).isEqualTo(Speaks.STRONGLY_FOR);
        keys.type("--");
        assertThat(last().speaks()).isEqualTo(Speaks.STRONGLY_AGAINST);
        keys.type("0+");
        assertThat(last().speaks()).isEqualTo(Speaks.FOR);
        keys.type("00");
        assertThat(last().speaks()).isEqualTo(Speaks.NEITHER);
        assertThat(weighings()).hasSize(before + 1);

        desk.undo().orThrow();
        assertThat(last().speaks()).as("what was neither already is no change").isEqualTo(Speaks.FOR);
    }

    @Test
    void delete_on_a_cell_that_is_not_weighed_says_so() {
        int before = weighings().size();
        keys.press(KeyEvent.VK_DELETE);
        assertThat(weighings()).hasSize(before);
        assertThat(GoldenText.of(window.pane)).contains("This finding is not weighed against that cause.");
    }

    @Test
    void a_why_that_could_not_be_written_stays_in_its_field_and_is_written_when_it_can_be() {
        keys.type("-").press(KeyEvent.VK_ENTER);
        JTextField why = (JTextField) Keyboard.owner();
        assertThat(why.getClientProperty("JComponent.outline")).isNull();
        desk.lookAsOf(SampleBook.OPENING.minusDays(1));
        keys.type("no lateral g").press(KeyEvent.VK_ENTER);
        Focus.await(why);
        assertThat(why.getText()).isEqualTo("no lateral g");
        assertThat(why.getClientProperty("JComponent.outline")).isEqualTo("error");

        desk.lookAsOf(null);
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(table);
        assertThat(last().why()).isEqualTo("no lateral g");
    }

    @Test
    void a_menu_weighs_the_cell_it_was_opened_on_whatever_is_shown_by_then() {
        keys.press(KeyEvent.VK_F10, InputEvent.SHIFT_DOWN_MASK);
        JPopupMenu menu = (JPopupMenu) MenuSelectionManager.defaultManager().getSelectedPath()[0];
        JMenuItem speaksFor = (JMenuItem) menu.getComponent(Speaks.FOR.ordinal());
        Id<Incident> opened = desk.view()
                .facts()
                .of(Incident.class)
                .named("INC-05")
                .orElseThrow()
                .id();
        window.choose("INC-03");
        speaksFor.doClick();
        window.tasks.awaitIdle();

        assertThat(last().speaks()).isEqualTo(Speaks.FOR);
        assertThat(desk.view().facts().of(Finding.class).get(last().finding()).incident())
                .isEqualTo(opened);
        menu.setVisible(false);
    }

    @Test
    void enter_asks_why_in_place_and_what_is_typed_is_kept_when_the_field_is_left() {
        keys.type("-");
        keys.press(KeyEvent.VK_ENTER);
        Component why = Keyboard.owner();
        assertThat(why).isInstanceOf(JTextField.class);
        keys.type("no lateral g").press(KeyEvent.VK_ENTER);
        Focus.await(table);
        assertThat(last().why()).isEqualTo("no lateral g");
        assertThat(last().speaks()).isEqualTo(Speaks.AGAINST);

        keys.press(KeyEvent.VK_F2);
        keys.type("fell steadily").press(KeyEvent.VK_TAB);
        window.tasks.awaitIdle();
        assertThat(last().why()).isEqualTo("fell steadily");
    }

    @Test
    void escape_leaves_the_why_as_it_was_and_a_cell_that_is_not_weighed_asks_for_that_first() {
        keys.press(KeyEvent.VK_ENTER);
        assertThat(table.isFocusOwner()).isTrue();
        assertThat(window.said()).contains("First say how it speaks");
        keys.type("+").press(KeyEvent.VK_ENTER).type("x").press(KeyEvent.VK_ESCAPE);
        Focus.await(table);
        assertThat(last().why()).isEmpty();
    }

    @Test
    void under_the_findings_enter_says_how_a_cause_stands_and_writes_a_test() {
        for (int i = 0; i < 8; i++) {
            keys.press(KeyEvent.VK_DOWN);
        }
        assertThat(inHand()).contains("contributing, seen, 25 Jun");
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_DOWN);
        assertThat(inHand()).contains("cooler cut open: full of flakes");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(window.asked).containsExactly("cause_call", "cause_test");
    }

    /** As of an earlier day the logbook is only looked at: it says so, and nothing is changed. */
    @Test
    void as_of_an_earlier_day_nothing_is_weighed_and_it_says_why() {
        desk.lookAsOf(SampleBook.OPENING.minusDays(1));
        window.reads(desk::view);
        int before = weighings().size();
        table.requestFocusInWindow();
        Focus.await(table);
        keys.type("+");
        assertThat(weighings()).hasSize(before);
    }
}
