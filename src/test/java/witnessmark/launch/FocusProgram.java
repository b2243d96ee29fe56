package witnessmark.launch;

import static witnessmark.desktop.testing.Hand.await;
import static witnessmark.desktop.testing.Hand.button;
import static witnessmark.desktop.testing.Hand.onEventThread;
import static witnessmark.desktop.testing.Hand.settle;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.accessibility.AccessibleContext;

/**
 * The shipped program, its places gone to by their keys, each for the first time and then again. Printed is what has the
 * focus there, a line each, and {@code done} at the end.
 */
final class FocusProgram {
    private FocusProgram() {}

    public static void main(String[] args) {
        int status = 1;
        try {
            walk();
            status = 0;
        } catch (Exception e) {
            e.printStackTrace();
        } finally {
            Runtime.getRuntime().halt(status);
        }
    }

    private static void walk() throws Exception {
        Main.main(new String[0]);
        await(() -> button("Log a run").isPresent() && owner() != null);
        settle();
        for (int round = 0; round < 2; round++) {
            for (int key : new int[] {3, 8, 5, 4, 1}) {
                onEventThread(() -> press(KeyEvent.VK_0 + key));
                settle();
                onEventThread(() -> System.out.println(key + " " + words(owner())));
            }
        }
        System.out.println("done");
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

    private static String words(Component component) {
        AccessibleContext context = component == null ? null : component.getAccessibleContext();
        return context == null
                ? "nothing"
                : context.getAccessibleRole().toDisplayString(java.util.Locale.ENGLISH) + " "
                        + context.getAccessibleName();
    }
}
