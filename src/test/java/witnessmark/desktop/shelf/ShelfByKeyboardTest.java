package witnessmark.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.form.SheetMenu;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.TabWalk;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;

/** The place Parts shelf in a real window with nothing but keys. */
@UiTest(display = true)
class ShelfByKeyboardTest {
    private final JFrame frame = new JFrame();

    private ShelfWindow window;
    private Keyboard keys;

    @BeforeEach
    void show() {
        window = new ShelfWindow(Looks.light(), ShelfWindow.english(), ShelfWindow.small());
        keys = new Keyboard(window.tasks::awaitIdle);
        frame.setContentPane(window.pane);
        frame.setJMenuBar(window.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        window.place.firstFocus().requestFocusInWindow();
        Focus.await(window.place.firstFocus());
    }

    @AfterEach
    void close() {
        frame.dispose();
        window.close();
    }

    @Test
    void what_is_typed_over_the_rows_filters_them_by_mark_kind_and_batch() {
        typeOver("vs-03");
        assertThat(window.marks()).containsExactly("VS-03");
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(window.place.firstFocus());
        assertThat(window.marks()).hasSize(9);
        typeOver("or-2217");
        assertThat(window.marks()).containsExactly("VS-03", "VS-06");
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(window.place.firstFocus());
        typeOver("rods shelf");
        assertThat(window.marks()).containsExactly("RS-03", "RS-01/1");
    }

    @Test
    void the_rows_take_the_focus_on_arrival_and_keep_it_when_they_are_read() {
        try (ShelfWindow fresh = ShelfWindow.arriving()) {
            frame.setContentPane(fresh.pane);
            frame.validate();
            fresh.place.firstFocus().requestFocusInWindow();
            Focus.await(fresh.place.firstFocus());
            fresh.tasks.awaitIdle();
            assertThat(Keyboard.owner()).isSameAs(fresh.place.firstFocus());
        }
    }

    @Test
    void enter_opens_the_page_of_the_part_in_hand() {
        keys.press(KeyEvent.VK_DOWN).press(KeyEvent.VK_ENTER);
        assertThat(window.asked).containsExactly("page " + window.part("RS-03").id());
    }

    @Test
    void the_menu_key_offers_what_can_be_written_down_where_the_part_is() {
        typeOver("vs-15");
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(window.place.firstFocus());
        keys.press(KeyEvent.VK_F10, InputEvent.SHIFT_DOWN_MASK);
        assertThat(menu())
                .containsExactly("Open its page", "Fit…", "Send out…", "Set aside…", "Scrap…", "Correct this part…");
        MenuSelectionManager.defaultManager().clearSelectedPath();
    }

    /** Whoever types a mark and presses the menu key at once means the part just found. */
    @Test
    void the_menu_key_in_the_filter_offers_it_for_the_first_row_left() {
        typeOver("vs-15");
        keys.press(KeyEvent.VK_F10, InputEvent.SHIFT_DOWN_MASK);
        assertThat(menu()).startsWith("Open its page", "Fit…");
        assertThat(window.place.panel().parts().sheet().selected().mark()).isEqualTo("VS-15");
        MenuSelectionManager.defaultManager().clearSelectedPath();
    }

    @Test
    void what_can_be_written_down_goes_by_where_the_part_is() {
        assertThat(ways("VS-03"))
                .containsExactly("Open its page", "Take off…", "Set aside…", "Scrap…", "Correct this part…");
        assertThat(ways("HD-06"))
                .containsExactly(
                        "Open its page",
                        "It came back…",
                        "Ask after it…",
                        "Set aside…",
                        "Scrap…",
                        "Correct this part…");
        assertThat(ways("RS-03")).contains("Decide what becomes of it…", "Split the set…");
        assertThat(ways("CR-05")).containsExactly("Open its page", "Correct this part…");
    }

    @Test
    void what_is_chosen_there_opens_the_sheet_with_the_part_on_it() {
        way("VS-03", "Take off…").work().run();
        way("VS-15", "Send out…").work().run();
        assertThat(window.asked).containsExactly("take_off", "send_out");
        assertThat(window.part("VS-15").sheets())
                .allSatisfy(sheet -> assertThat(sheet.texts().values())
                        .anyMatch(text -> text.endsWith(window.part("VS-15").id())));
    }

    @Test
    void tab_goes_over_choice_filter_parts_and_stock_and_comes_round() {
        assertThat(TabWalk.namesFrom(window.place.firstFocus()))
                .doesNotHaveDuplicates()
                .containsSubsequence("Parts", "New batch…", "Stock by batch");
    }

    @Test
    void a_part_or_batch_asked_for_is_brought_into_view_out_of_what_hides_it() {
        window.where(Whereabout.BORROWED);
        window.place.open(ShelfWindow.small()
                .facts()
                .of(witnessmark.domain.Part.class)
                .named("VS-15")
                .orElseThrow()
                .id()
                .text());
        assertThat(window.place.panel().parts().sheet().selected().mark()).isEqualTo("VS-15");
        assertThat(window.place.panel().parts().where().chosen()).isEqualTo(Whereabout.EVERYWHERE);
    }

    /** The first letter takes the focus to the field, as the others of a person's typing wait for that. */
    private void typeOver(String text) {
        keys.type(text.substring(0, 1));
        Focus.await(new Ui(window.place.panel().parts().sheet()).field("Filter this list"));
        keys.type(text.substring(1));
    }

    private List<String> ways(String mark) {
        return window.place.panel().parts().ways(window.part(mark)).stream()
                .map(way -> way.caption().text())
                .toList();
    }

    private SheetMenu.Way way(String mark, String named) {
        return window.place.panel().parts().ways(window.part(mark)).stream()
                .filter(way -> way.caption().text().equals(named))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> menu() {
        MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
        JPopupMenu menu = (JPopupMenu) path[0];
        return java.util.Arrays.stream(menu.getComponents())
                .map(item -> ((JMenuItem) item).getText())
                .toList();
    }
}
