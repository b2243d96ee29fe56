package witnessmark.launch;

import static witnessmark.desktop.testing.Hand.await;
import static witnessmark.desktop.testing.Hand.button;
import static witnessmark.desktop.testing.Hand.onEventThread;
import static witnessmark.desktop.testing.Hand.settle;

import java.awt.Component;
import java.awt.Frame;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Objects;
import java.util.stream.Stream;
import javax.accessibility.AccessibleContext;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.MenuElement;

/**
 * The shipped program, its places gone to by their keys, each for the first time and then again. Printed is what has the
 * focus there, a line each, then where one is after a sheet was left, and {@code done} at the end.
 */
final class FocusProgram {
    private FocusProgram() {}

    public static void main(String[] args) {
        Shipped.run(FocusProgram::walk);
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
        sheetsAndBack();
        System.out.println("done");
    }

    /** What is called from a list and left with Escape, once from the menu and once by being looked for. */
    private static void sheetsAndBack() throws Exception {
        onEventThread(() -> press(KeyEvent.VK_3));
        settle();
        onEventThread(() -> press(KeyEvent.VK_DOWN, 0));
        onEventThread(() -> press(KeyEvent.VK_DOWN, 0));
        settle();
        onEventThread(() -> System.out.println("at " + words(owner())));
        for (String command : new String[] {"Report an incident…", "Export a case to share…"}) {
            onEventThread(() -> menuItem(command).doClick());
            settle();
            onEventThread(() -> System.out.println("on " + words(owner())));
            onEventThread(() -> press(KeyEvent.VK_ESCAPE, 0));
            settle();
            onEventThread(() -> System.out.println("at " + words(owner())));
        }
        onEventThread(() -> press(KeyEvent.VK_K));
        onEventThread(() -> ((JTextField) owner()).setText("report an incident"));
        settle();
        onEventThread(() -> press(KeyEvent.VK_ENTER, 0));
        settle();
        onEventThread(() -> press(KeyEvent.VK_ESCAPE, 0));
        settle();
        onEventThread(() -> System.out.println("at " + words(owner())));
    }

    private static JMenuItem menuItem(String name) {
        return Stream.of(Frame.getFrames())
                .filter(JFrame.class::isInstance)
                .map(frame -> ((JFrame) frame).getJMenuBar())
                .filter(Objects::nonNull)
                .flatMap(FocusProgram::items)
                .filter(item -> name.equals(item.getText()))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<JMenuItem> items(MenuElement in) {
        return Stream.of(in.getSubElements())
                .flatMap(each ->
                        Stream.concat(each instanceof JMenuItem item ? Stream.of(item) : Stream.empty(), items(each)));
    }

    private static void press(int key) {
        press(key, InputEvent.CTRL_DOWN_MASK);
    }

    private static void press(int key, int with) {
        Component owner = owner();
        if (owner == null) {
            throw new IllegalStateException("nothing has the focus");
        }
        for (int id : new int[] {KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED}) {
            owner.dispatchEvent(
                    new KeyEvent(owner, id, System.currentTimeMillis(), with, key, KeyEvent.CHAR_UNDEFINED));
        }
    }

    private static Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private static String words(Component component) {
        AccessibleContext context = component == null ? null : component.getAccessibleContext();
        String row = component instanceof JTable table ? ", row " + table.getSelectedRow() : "";
        return context == null
                ? "nothing"
                : context.getAccessibleRole().toDisplayString(java.util.Locale.ENGLISH) + " "
                        + context.getAccessibleName() + row;
    }
}
