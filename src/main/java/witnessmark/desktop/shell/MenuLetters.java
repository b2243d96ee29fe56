package witnessmark.desktop.shell;

import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;

/**
 * A letter pressed while a menu is open chooses in the menu, and the character it types is nobody's: without this it
 * lands in the field that the chosen command gives the focus to. What only drops down under a field, and leaves the keys
 * to it, is no menu.
 */
final class MenuLetters implements KeyEventDispatcher {
    private boolean menus;

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        if (event.getID() == KeyEvent.KEY_PRESSED) {
            MenuElement[] open = MenuSelectionManager.defaultManager().getSelectedPath();
            menus = open.length > 0 && open[0].getComponent().isFocusable();
        }
        return event.getID() == KeyEvent.KEY_TYPED && menus;
    }
}
