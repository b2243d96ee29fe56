package witnessmark.desktop.testing;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JList;
import javax.swing.JMenuBar;
import javax.swing.JScrollBar;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JViewport;
import javax.swing.table.JTableHeader;
import javax.swing.text.JTextComponent;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoteLine;

/**
 * What must hold of every page however it is laid out: nothing overlaps its sibling or leaves its parent, no words are
 * cut that were not allowed to be, nothing to click is smaller than 24 by 24, a table shows five rows if it has them.
 */
public final class LayoutRules {
    private static final int TARGET = 24;
    private static final int ROWS = 5;
    /** The share of a line that must be left of it where it may be cut. */
    private static final double LEAST_SHOWN = 0.4;

    /** A focus ring may reach over an edge. */
    private final int slack = UIScale.scale(2);

    private final List<String> broken = new ArrayList<>();

    private LayoutRules() {}

    /** The rules broken in what is laid out, each as a sentence; empty when all hold. */
    public static List<String> broken(Component root) {
        LayoutRules rules = new LayoutRules();
        for (Component component : Stage.visible(root)) {
            if (!insideWidget(component, root)) {
                rules.check(component);
            }
        }
        return rules.broken;
    }

    private void check(Component component) {
        if (component instanceof Container container && !isWidget(component)) {
            checkChildren(container);
        }
        checkWords(component);
        checkTarget(component);
        if (component instanceof JTable table) {
            checkRows(table);
        }
    }

    private void checkChildren(Container container) {
        List<Component> children = new ArrayList<>();
        for (Component child : container.getComponents()) {
            if (child.isVisible() && child.getWidth() > 0 && child.getHeight() > 0) {
                children.add(child);
            }
        }
        boolean scrolls = container instanceof JViewport;
        for (Component child : children) {
            if (!scrolls && !contains(container, child)) {
                broken.add(name(child) + " leaves " + name(container) + ": " + child.getBounds() + " in "
                        + container.getSize());
            }
        }
        if (!(container instanceof JLayeredPane)) {
            checkOverlaps(children);
        }
    }

    private void checkOverlaps(List<Component> children) {
        for (int i = 0; i < children.size(); i++) {
            for (int j = i + 1; j < children.size(); j++) {
                Rectangle common =
                        children.get(i).getBounds().intersection(children.get(j).getBounds());
                if (common.width > slack && common.height > slack) {
                    broken.add(name(children.get(i)) + " overlaps " + name(children.get(j)) + " by " + common.width
                            + " x " + common.height);
                }
            }
        }
    }

    private void checkWords(Component component) {
        if (component instanceof JTextArea area && !area.isFocusable()) {
            Dimension wanted = area.getPreferredSize();
            if (wanted.height > area.getHeight() + slack) {
                broken.add(name(area) + " is cut: " + area.getHeight() + " high, needs " + wanted.height);
            }
            return;
        }
        boolean words = component instanceof JLabel || component instanceof AbstractButton;
        if (!words) {
            return;
        }
        Dimension wanted = component.getPreferredSize();
        boolean mayBeCut = component instanceof NoteLine || mayBeCut(component);
        double room = (double) component.getWidth() / Math.max(1, wanted.width);
        if (mayBeCut && wanted.width > 0 && room < LEAST_SHOWN) {
            broken.add(name(component) + " is cut to almost nothing: " + component.getWidth() + " of " + wanted.width);
        }
        if (!mayBeCut
                && (wanted.width > component.getWidth() + slack || wanted.height > component.getHeight() + slack)) {
            broken.add(name(component) + " is cut: " + component.getSize() + ", needs " + wanted);
        }
    }

    private static boolean mayBeCut(Component component) {
        return component instanceof JComponent c && c.getClientProperty(Lettering.MAY_BE_CUT) != null;
    }

    private void checkTarget(Component component) {
        boolean target = component instanceof AbstractButton
                || component instanceof JComboBox<?>
                || (component instanceof JTextComponent text && text.isEditable());
        if (target && (component.getWidth() < TARGET || component.getHeight() < TARGET)) {
            broken.add(name(component) + " is too small to hit: " + component.getSize());
        }
    }

    private void checkRows(JTable table) {
        int wanted = Math.min(ROWS, table.getRowCount()) * table.getRowHeight();
        if (table.getParent() instanceof JViewport port && port.getHeight() < wanted) {
            broken.add(name(table) + " shows only " + port.getHeight() / table.getRowHeight() + " rows");
        }
    }

    private boolean contains(Container parent, Component child) {
        return child.getX() >= -slack
                && child.getY() >= -slack
                && child.getX() + child.getWidth() <= parent.getWidth() + slack
                && child.getY() + child.getHeight() <= parent.getHeight() + slack;
    }

    private static boolean insideWidget(Component component, Component root) {
        for (Component at = component.getParent(); at != null && at != root.getParent(); at = at.getParent()) {
            if (isWidget(at)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWidget(Component component) {
        return component instanceof JTextComponent
                || component instanceof JComboBox<?>
                || component instanceof JTable
                || component instanceof JTableHeader
                || component instanceof JList<?>
                || component instanceof JMenuBar
                || component instanceof JScrollBar
                || component instanceof CellRendererPane;
    }

    private static String name(Component component) {
        String words = Words.of(component);
        return component.getClass().getSimpleName() + (words.isEmpty() ? "" : " '" + words + "'");
    }
}
