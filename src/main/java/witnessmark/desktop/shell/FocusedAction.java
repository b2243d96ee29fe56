package witnessmark.desktop.shell;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import javax.swing.Action;
import javax.swing.JComponent;

/** Does what the component in focus, or what it is in, calls by a name: cut, copy, filter. */
final class FocusedAction {
    private FocusedAction() {}

    /** Nothing when the component in focus knows no such thing. */
    static void perform(String name) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        if (owner instanceof JComponent component) {
            perform(component, name);
        }
    }

    /**
     * Asks whatever the focus is in, outwards, then whatever is on the page, from the top.
     *
     * @return whether anything knew the name
     */
    static boolean perform(String name, Component page) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        for (Component at = owner; at != null; at = at.getParent()) {
            if (at instanceof JComponent component && perform(component, name)) {
                return true;
            }
        }
        return performIn(page, name);
    }

    private static boolean performIn(Component component, String name) {
        if (!component.isVisible()) {
            return false;
        }
        if (component instanceof JComponent one && perform(one, name)) {
            return true;
        }
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                if (performIn(child, name)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean perform(JComponent component, String name) {
        Action action = component.getActionMap().get(name);
        if (action == null || !action.isEnabled()) {
            return false;
        }
        action.actionPerformed(new ActionEvent(component, ActionEvent.ACTION_PERFORMED, name));
        return true;
    }
}
