package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseListener;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

/** Finds components by the names people know, and uses them as people do. No window is needed. */
public final class Ui {
    private final Component root;

    public Ui(Component root) {
        this.root = root;
    }

    /**
     * The input with the accessible name.
     *
     * @throws AssertionError if there is none, or more than one
     */
    public JTextComponent field(String name) {
        return one(JTextComponent.class, name);
    }

    public JComboBox<?> choice(String name) {
        return one(JComboBox.class, name);
    }

    public AbstractButton button(String name) {
        return one(AbstractButton.class, name);
    }

    public JTable table(String name) {
        return one(JTable.class, name);
    }

    /** Types the text as keys, in place of what is selected. */
    public static void type(JTextComponent field, String text) {
        for (char c : text.toCharArray()) {
            KeyEvent typed = new KeyEvent(field, KeyEvent.KEY_TYPED, 0L, 0, KeyEvent.VK_UNDEFINED, c);
            Action action = field.getKeymap().getDefaultAction();
            if (action == null) {
                throw new AssertionError("the field takes no typing");
            }
            action.actionPerformed(new java.awt.event.ActionEvent(
                    field, java.awt.event.ActionEvent.ACTION_PERFORMED, String.valueOf(typed.getKeyChar())));
        }
    }

    /**
     * Does what the key does in the component.
     *
     * @throws AssertionError if it does nothing there
     */
    public static void press(JComponent component, KeyStroke key) {
        for (int condition : new int[] {
            JComponent.WHEN_FOCUSED, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, JComponent.WHEN_IN_FOCUSED_WINDOW
        }) {
            Object bound = component.getInputMap(condition).get(key);
            Action action = bound == null ? null : component.getActionMap().get(bound);
            if (action != null) {
                action.actionPerformed(new java.awt.event.ActionEvent(
                        component, java.awt.event.ActionEvent.ACTION_PERFORMED, String.valueOf(bound)));
                return;
            }
        }
        throw new AssertionError(key + " does nothing in " + Words.name(component));
    }

    /** Presses the mouse there. */
    public static void click(JComponent component, int x, int y) {
        MouseEvent pressed =
                new MouseEvent(component, MouseEvent.MOUSE_PRESSED, 0L, 0, x, y, 1, false, MouseEvent.BUTTON1);
        for (MouseListener listener : component.getMouseListeners()) {
            listener.mousePressed(pressed);
        }
    }

    private <C extends Component> C one(Class<C> type, String name) {
        List<C> found = Stage.visible(root).stream()
                .filter(type::isInstance)
                .map(type::cast)
                .filter(component -> Words.name(component).equals(name))
                .toList();
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " components of " + type.getSimpleName() + " are called '" + name
                    + "'; there are " + names(type));
        }
        return found.get(0);
    }

    private List<String> names(Class<? extends Component> type) {
        return Stage.visible(root).stream()
                .filter(type::isInstance)
                .map(Words::name)
                .toList();
    }
}
