package witnessmark.desktop.shell;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import javax.swing.Action;
import javax.swing.JComponent;

/** Does what the component in focus calls by a name: cut, copy, paste. Nothing when it knows no such thing. */
final class FocusedAction {
    private FocusedAction() {}

    static void perform(String name) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        if (owner instanceof JComponent component) {
            Action action = component.getActionMap().get(name);
            if (action != null && action.isEnabled()) {
                action.actionPerformed(new ActionEvent(component, ActionEvent.ACTION_PERFORMED, name));
            }
        }
    }
}
