package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JMenuBar;
import javax.swing.JRootPane;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Lays components out without a window, and walks over them. */
public final class Stage {
    private Stage() {}

    /** The component at the size, laid out down to the last label. Call it again after a change. */
    public static <C extends Component> C lay(C component, int width, int height) {
        component.setSize(width, height);
        // Wrapped text knows its height only once it has its width.
        List<Rectangle> before = List.of();
        for (int pass = 0; pass < 3; pass++) {
            walk(component, Stage::giveHeading);
            walk(component, Component::invalidate);
            walk(component, Component::doLayout);
            List<Rectangle> after = new ArrayList<>();
            walk(component, each -> after.add(each.getBounds()));
            if (after.equals(before)) {
                break; // once more would move nothing either
            }
            before = after;
        }
        return component;
    }

    /** What a window would hold, laid out at the size. */
    public static JRootPane window(Container content, @Nullable JMenuBar menus, int width, int height) {
        JRootPane root = new JRootPane();
        root.setContentPane(content);
        root.setJMenuBar(menus);
        return lay(root, width, height);
    }

    /**
     * The same, made once for its content and only laid out again after that, as a window that changes its size.
     *
     * @param menus asked the first time; a bar of all commands takes longer to make than a page to lay out
     */
    public static JRootPane window(Container content, Supplier<JMenuBar> menus, int width, int height) {
        JRootPane before = SwingUtilities.getRootPane(content);
        return before == null || before.getParent() != null
                ? window(content, menus.get(), width, height)
                : lay(before, width, height);
    }

    /** Visits the component and everything in it. */
    public static void walk(Component component, Consumer<Component> visit) {
        visit.accept(component);
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                walk(child, visit);
            }
        }
    }

    /** Everything in the component that is to be seen: visible, down from it, and not of no size. */
    public static List<Component> visible(Component root) {
        List<Component> all = new ArrayList<>();
        collectVisible(root, all);
        return all;
    }

    private static void collectVisible(Component component, List<Component> all) {
        if (!component.isVisible() || component.getWidth() == 0 || component.getHeight() == 0) {
            return;
        }
        all.add(component);
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                collectVisible(child, all);
            }
        }
    }

    /** Outside a window nobody puts a table's heading in its place. */
    private static void giveHeading(Component component) {
        if (component instanceof JScrollPane scroll
                && scroll.getViewport() != null
                && scroll.getViewport().getView() instanceof JTable table
                && scroll.getColumnHeader() == null) {
            scroll.setColumnHeaderView(table.getTableHeader());
        }
    }
}
