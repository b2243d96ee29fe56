package witnessmark.desktop.shell;

import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import javax.swing.MenuSelectionManager;

/**
 * A letter pressed while a menu is open chooses in the menu; when that closed it, the character it types is nobody's:
 * without this it lands in the field that the chosen command gives the focus to. While the menu is still open the
 * character is the menu's: it opens a menu within it.
 */
final class MenuLetters implements KeyEventDispatcher {
    private boolean menus;

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        if (event.getID() == KeyEvent.KEY_PRESSED) {
            menus = open();
        }
        return event.getID() == KeyEvent.KEY_TYPED && menus && !open();
    }

    private static boolean open() {
        return MenuSelectionManager.defaultManager().getSelectedPath().length > 0;
    }
}
