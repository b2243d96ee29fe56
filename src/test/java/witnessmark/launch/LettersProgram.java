package witnessmark.launch;

import static witnessmark.desktop.testing.Hand.await;
import static witnessmark.desktop.testing.Hand.button;
import static witnessmark.desktop.testing.Hand.onEventThread;
import static witnessmark.desktop.testing.Hand.settle;

import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuItem;

/**
 * The shipped program, gone through by its menus: every place, every sheet. Letters that two things would answer to are
 * printed, a line each, and {@code done} at the end.
 */
final class LettersProgram {
    private LettersProgram() {}

    public static void main(String[] args) {
        Shipped.run(LettersProgram::walk);
    }

    private static void walk() throws Exception {
        Main.main(new String[0]);
        await(() -> button("Log a run").isPresent());
        List<JMenuItem> ways = new ArrayList<>();
        onEventThread(() -> {
            for (JMenu menu : menus()) {
                report(menu.getText(), menu.getMenuComponents());
                if (List.of("Go", "Record").contains(menu.getText())) {
                    collectWays(menu, ways);
                }
            }
        });
        for (JMenuItem way : ways) {
            onEventThread(() -> way.doClick(0));
            settle();
            onEventThread(() -> report(way.getText(), frame()));
        }
        onEventThread(() -> button("Start our logbook").orElseThrow().doClick(0));
        settle();
        onEventThread(() -> report("Start our logbook", frame()));
        System.out.println("done");
    }

    private static void collectWays(JMenu menu, List<JMenuItem> ways) {
        for (Component item : menu.getMenuComponents()) {
            if (item instanceof JMenu inner) {
                report(menu.getText() + ", " + inner.getText(), inner.getMenuComponents());
                collectWays(inner, ways);
            } else if (item instanceof JMenuItem way) {
                ways.add(way);
            }
        }
    }

    private static void report(String where, Component... in) {
        Map<Integer, List<String>> claims = new TreeMap<>();
        for (Component component : in) {
            collect(component, claims, component instanceof JFrame);
        }
        claims.forEach((letter, who) -> {
            if (who.size() > 1) {
                System.out.println(where + ": " + (char) letter.intValue() + " " + who);
            }
        });
    }

    private static void collect(Component component, Map<Integer, List<String>> claims, boolean showing) {
        if (showing && !component.isShowing()) {
            return;
        }
        int letter = 0;
        String words = "";
        if (component instanceof AbstractButton button) {
            letter = button.getMnemonic();
            words = button.getText();
        } else if (component instanceof JLabel label) {
            letter = label.getDisplayedMnemonic();
            words = label.getText();
        }
        if (letter != 0) {
            claims.computeIfAbsent(letter, any -> new ArrayList<>()).add(words);
        }
        if (component instanceof Container container && !(component instanceof JMenu)) {
            for (Component child : container.getComponents()) {
                collect(child, claims, showing);
            }
        }
    }

    private static List<JMenu> menus() {
        List<JMenu> menus = new ArrayList<>();
        for (int i = 0; i < frame().getJMenuBar().getMenuCount(); i++) {
            menus.add(frame().getJMenuBar().getMenu(i));
        }
        return menus;
    }

    private static JFrame frame() {
        for (Frame frame : Frame.getFrames()) {
            if (frame.isShowing() && frame instanceof JFrame window) {
                return window;
            }
        }
        throw new IllegalStateException("no window shows");
    }
}
