package witnessmark.desktop.testing;

import java.awt.Component;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JTable;
import javax.swing.JTree;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Whether a screen reader can name everything that takes the focus, and names no two inputs alike. */
public final class AccessibleWalk {
    private AccessibleWalk() {}

    /** What is wrong, each as a sentence; empty when nothing is. */
    public static List<String> faults(Component root) {
        List<String> faults = new ArrayList<>();
        Map<String, Component> inputs = new HashMap<>();
        for (Component component : Stage.visible(root)) {
            if (!takesFocus(component) || insideAnother(component)) {
                continue;
            }
            String name = Words.name(component);
            if (name.isBlank()) {
                faults.add(component.getClass().getName() + " at " + component.getBounds() + " has no name");
            }
            boolean input = component instanceof JTextComponent || component instanceof JComboBox<?>;
            if (input && inputs.put(name, component) != null) {
                faults.add("two inputs are called " + name);
            }
        }
        return faults;
    }

    static boolean takesFocus(Component component) {
        boolean kind = component instanceof AbstractButton
                || component instanceof JTextComponent
                || component instanceof JComboBox<?>
                || component instanceof JTable
                || component instanceof JList<?>
                || component instanceof JTree
                || isPainted(component);
        return kind && component.isEnabled() && component.isFocusable();
    }

    /** Whether it paints itself and takes keys: a chart, a line of life. */
    static boolean isPainted(Component component) {
        return component instanceof JPanel panel
                && panel.getComponentCount() == 0
                && panel.getInputMap(JComponent.WHEN_FOCUSED).size() > 0;
    }

    private static boolean insideAnother(Component component) {
        return SwingUtilities.getAncestorOfClass(JComboBox.class, component) != null
                || SwingUtilities.getAncestorOfClass(JScrollBar.class, component) != null;
    }
}
