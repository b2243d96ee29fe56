package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.UiTest;

/** What a letter types when it has chosen something in a menu. */
@UiTest
class MenuLettersTest {
    private final MenuLetters letters = new MenuLetters();
    private final JLabel anywhere = new JLabel();

    @AfterEach
    void close() {
        MenuSelectionManager.defaultManager().clearSelectedPath();
    }

    @Test
    void the_letter_that_chose_in_a_menu_is_typed_nowhere_and_the_next_one_is() {
        MenuSelectionManager.defaultManager().setSelectedPath(new MenuElement[] {new JMenu("Record")});
        assertThat(letters.dispatchKeyEvent(pressed('E')))
                .as("the menu still gets it")
                .isFalse();
        MenuSelectionManager.defaultManager().clearSelectedPath(); // the command was chosen
        assertThat(letters.dispatchKeyEvent(typed('e'))).isTrue();

        assertThat(letters.dispatchKeyEvent(pressed('K'))).isFalse();
        assertThat(letters.dispatchKeyEvent(typed('k'))).isFalse();
    }

    @Test
    void while_the_menu_is_open_what_is_typed_is_the_menus_so_that_it_opens_one_within() {
        MenuSelectionManager.defaultManager().setSelectedPath(new MenuElement[] {new JMenu("Record")});
        assertThat(letters.dispatchKeyEvent(pressed('P'))).isFalse();
        assertThat(letters.dispatchKeyEvent(typed('p'))).isFalse();
    }

    private KeyEvent pressed(char key) {
        return new KeyEvent(anywhere, KeyEvent.KEY_PRESSED, 0, 0, key, Character.toLowerCase(key));
    }

    private KeyEvent typed(char key) {
        return new KeyEvent(anywhere, KeyEvent.KEY_TYPED, 0, 0, KeyEvent.VK_UNDEFINED, key);
    }
}
