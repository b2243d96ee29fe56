package witnessmark.desktop.form;

import java.awt.AWTKeyStroke;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.HashSet;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JTextField;

/** Which keys move the focus on. */
public final class Traversal {
    private Traversal() {}

    /** Enter in a short field moves to the next one. */
    public static void enterMovesOn(JTextField field) {
        addForward(field, AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_ENTER, 0));
    }

    /** Enter moves to the next field and Shift+Enter to the one before. */
    public static void enterMovesBothWays(JTextField field) {
        enterMovesOn(field);
        Set<AWTKeyStroke> keys =
                new HashSet<>(field.getFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS));
        keys.add(AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_ENTER, InputEvent.SHIFT_DOWN_MASK));
        field.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, keys);
    }

    /** Enter stays in the field, where it does something. */
    static void enterStays(JTextField field) {
        field.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    }

    /** Tab leaves a long text or a table instead of being written into it or moving inside it. */
    public static void tabLeaves(JComponent component) {
        component.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        component.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    }

    static void addForward(Component component, AWTKeyStroke stroke) {
        Set<AWTKeyStroke> keys =
                new HashSet<>(component.getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS));
        keys.add(stroke);
        component.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, keys);
    }
}
