package witnessmark.desktop.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JScrollBar;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import witnessmark.desktop.form.LifeStrip;

/** A page as text: what stands on it, in reading order, without a single pixel. */
public final class GoldenText {
    private static final int LINE = 8;
    /** The height of a field: pixels. */
    private static final int TALL = 24;

    private static final int ROWS = 5;

    private GoldenText() {}

    /** One line for each thing on the page: its role, its name, what it holds. */
    public static String of(Container root) {
        List<Component> shown = new ArrayList<>();
        collect(root, shown);
        List<Component> read = inReadingOrder(shown, root);
        return read.stream().map(GoldenText::line).collect(Collectors.joining("\n", "", "\n"));
    }

    /**
     * Line by line, whatever the lines' distance from the top: what stands beside the first of a line belongs to it, so that
     * letterings of two sizes, centred beside each other, are never parted by where the page begins.
     */
    private static List<Component> inReadingOrder(List<Component> shown, Container root) {
        List<Component> down = new ArrayList<>(shown);
        down.sort(Comparator.comparingInt((Component c) -> middle(c, root)).thenComparingInt(c -> at(c, root).x));
        List<Component> read = new ArrayList<>();
        List<Component> line = new ArrayList<>();
        for (Component next : down) {
            if (!line.isEmpty() && middle(next, root) - middle(line.get(0), root) >= LINE) {
                read.addAll(across(line, root));
                line.clear();
            }
            line.add(next);
        }
        read.addAll(across(line, root));
        return read;
    }

    private static List<Component> across(List<Component> line, Container root) {
        return line.stream().sorted(Comparator.comparingInt(c -> at(c, root).x)).toList();
    }

    /** Of its first line: what is taller is read from its top. */
    private static int middle(Component component, Container root) {
        return at(component, root).y + Math.min(component.getHeight(), TALL) / 2;
    }

    /**
     * Compares the page with {@code src/test/golden/NAME.txt}; {@code -DupdateGolden=true} writes that file instead.
     */
    public static void check(String name, Container root) {
        check(name, of(root));
    }

    /** The same for a page that is text already. */
    public static void check(String name, String now) {
        Path file = Path.of(System.getProperty("project.basedir", "."), "src/test/golden", name + ".txt");
        try {
            if (Boolean.getBoolean("updateGolden")) {
                Files.createDirectories(file.getParent());
                Files.writeString(file, now);
            }
            assertThat(now)
                    .as("the page as text; -DupdateGolden=true takes it as it is now")
                    .isEqualTo(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void collect(Component component, List<Component> shown) {
        if (!component.isVisible() || component.getWidth() == 0 || component instanceof JScrollBar) {
            return;
        }
        if (isLeaf(component)) {
            if (!Words.value(component).isBlank() || AccessibleWalk.takesFocus(component)) {
                shown.add(component);
            }
            return;
        }
        if (component instanceof Container container) {
            Arrays.stream(container.getComponents()).forEach(child -> collect(child, shown));
        }
    }

    private static boolean isLeaf(Component component) {
        return component instanceof JLabel
                || component instanceof AbstractButton
                || component instanceof JTextComponent
                || component instanceof JComboBox<?>
                || component instanceof JTable
                || component instanceof LifeStrip
                || AccessibleWalk.isPainted(component);
    }

    private static Point at(Component component, Container root) {
        // What is scrolled stands where it is looked at.
        Component placed = component.getParent() instanceof JViewport port ? port : component;
        return SwingUtilities.convertPoint(placed.getParent(), placed.getLocation(), root);
    }

    private static String line(Component component) {
        if (component instanceof JTable table) {
            return "table " + Words.name(table) + "\n" + rows(table);
        }
        String line = role(component) + " " + Words.of(component);
        if (AccessibleWalk.isPainted(component)) {
            line += ": " + component.getAccessibleContext().getAccessibleDescription();
        } else if (component instanceof JTextComponent text && text.isFocusable()) {
            line = role(component) + " " + Words.name(text) + ": " + text.getText();
        } else if (component instanceof JComboBox<?> combo) {
            line = role(component) + " " + Words.name(combo) + ": " + combo.getSelectedItem();
        } else if (component instanceof JLabel && !Words.name(component).equals(Words.of(component))) {
            line += " (" + Words.name(component) + ")";
        }
        return line + (component.isEnabled() ? "" : " [cannot be used now]");
    }

    private static String role(Component component) {
        AccessibleRole role = component.getAccessibleContext().getAccessibleRole();
        return role.toDisplayString(java.util.Locale.UK);
    }

    private static String rows(JTable table) {
        String heads = IntStream.range(0, table.getColumnCount())
                .mapToObj(table::getColumnName)
                .collect(Collectors.joining(" | ", "    ", ""));
        String cells = IntStream.range(0, Math.min(ROWS, table.getRowCount()))
                .mapToObj(row -> IntStream.range(0, table.getColumnCount())
                        .mapToObj(column -> cell(table, row, column))
                        .collect(Collectors.joining(" | ", "    ", "")))
                .collect(Collectors.joining("\n"));
        return cells.isEmpty() ? heads : heads + "\n" + cells;
    }

    private static String cell(JTable table, int row, int column) {
        return Words.name(table.prepareRenderer(table.getCellRenderer(row, column), row, column));
    }
}
