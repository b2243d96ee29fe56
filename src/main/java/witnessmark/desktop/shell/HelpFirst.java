package witnessmark.desktop.shell;

import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import java.util.function.BooleanSupplier;
import javax.swing.MenuSelectionManager;

/** Esc closes the help before it does anything to the page beside it; an open menu or list comes before both. */
final class HelpFirst implements KeyEventDispatcher {
    private final BooleanSupplier close;

    /** @param close closes the help; false when there was nothing to close */
    HelpFirst(BooleanSupplier close) {
        this.close = close;
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        return event.getID() == KeyEvent.KEY_PRESSED
                && event.getKeyCode() == KeyEvent.VK_ESCAPE
                && event.getModifiersEx() == 0
                && MenuSelectionManager.defaultManager().getSelectedPath().length == 0
                && close.getAsBoolean();
    }
}
