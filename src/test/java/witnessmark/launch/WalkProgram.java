package witnessmark.launch;

import static witnessmark.desktop.testing.Hand.await;
import static witnessmark.desktop.testing.Hand.button;
import static witnessmark.desktop.testing.Hand.onEventThread;
import static witnessmark.desktop.testing.Hand.settle;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenu;

/**
 * The shipped program, its places gone to by their keys. Printed is each kind of thing with a text in it that would take
 * a text beginning with a tag for markup, a line each, then {@code looked at} with how many there were.
 */
final class WalkProgram {
    private static final int PLACES = 9;

    private static final Set<String> FAULTS = new TreeSet<>();
    private static int lookedAt;

    private WalkProgram() {}

    public static void main(String[] args) {
        Shipped.run(WalkProgram::walk);
    }

    private static void walk() throws Exception {
        Main.main(new String[0]);
        await(() -> button("Log a run").isPresent() && owner() != null);
        for (int key = 1; key <= PLACES; key++) {
            int code = KeyEvent.VK_0 + key;
            onEventThread(() -> press(code));
            settle();
            onEventThread(() -> {
                for (Window window : Window.getWindows()) {
                    look(window);
                }
            });
        }
        FAULTS.forEach(System.out::println);
        System.out.println("looked at " + lookedAt);
    }

    private static void look(Container in) {
        for (Component child : in.getComponents()) {
            check(child);
            if (child instanceof Container deeper) {
                look(deeper);
            }
            if (child instanceof JMenu menu) {
                look(menu.getPopupMenu());
            }
        }
    }

    private static void check(Component component) {
        String text = component instanceof JLabel label
                ? label.getText()
                : component instanceof AbstractButton button ? button.getText() : null;
        if (text != null && !text.isBlank() && component instanceof JComponent with) {
            lookedAt++;
            if (!Boolean.TRUE.equals(with.getClientProperty("html.disable"))) {
                FAULTS.add("markup in " + component.getClass().getName() + " in "
                        + component.getParent().getClass().getName() + ": " + text);
            }
        }
    }

    private static void press(int key) {
        Component owner = owner();
        if (owner == null) {
            throw new IllegalStateException("nothing has the focus");
        }
        for (int id : new int[] {KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED}) {
            owner.dispatchEvent(new KeyEvent(
                    owner, id, System.currentTimeMillis(), InputEvent.CTRL_DOWN_MASK, key, KeyEvent.CHAR_UNDEFINED));
        }
    }

    private static Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }
}
