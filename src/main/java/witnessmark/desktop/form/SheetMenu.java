package witnessmark.desktop.form;

import java.awt.Component;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Function;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTable;

/**
 * What can be done with the row in hand of a list, in a menu.
 *
 * @param <R> the row
 */
public final class SheetMenu<R> {
    private final SheetTable<R> sheet;
    private final Function<? super R, List<Way>> ways;

    /**
     * One line of the menu.
     *
     * @param caption its words, and the letter that chooses it
     * @param work what it does
     */
    public record Way(Caption caption, Runnable work) {}

    SheetMenu(SheetTable<R> sheet, Function<? super R, List<Way>> ways) {
        this.sheet = sheet;
        this.ways = ways;
        JTable table = sheet.table();
        FormKeys.bind(table, Keys.plain(KeyEvent.VK_CONTEXT_MENU), "wm-menu", this::atRow);
        FormKeys.bind(table, Keys.shift(KeyEvent.VK_F10), "wm-menu", this::atRow);
        sheet.fromFilter(Keys.plain(KeyEvent.VK_CONTEXT_MENU), this::atRow);
        sheet.fromFilter(Keys.shift(KeyEvent.VK_F10), this::atRow);
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                mouseReleased(e);
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                int row = table.rowAtPoint(e.getPoint());
                if (e.isPopupTrigger() && row >= 0) {
                    table.setRowSelectionInterval(row, row);
                    show(table, e.getX(), e.getY());
                }
            }
        });
    }

    /** Shows it under a component that asks for it; nothing happens while no row is in hand. */
    public void under(Component asks) {
        show(asks, 0, asks.getHeight());
    }

    /** What it offers for the row in hand; empty when none is. */
    List<Way> offered() {
        R row = sheet.selected();
        return row == null ? List.of() : ways.apply(row);
    }

    private void atRow() {
        JTable table = sheet.table();
        Rectangle cell = table.getCellRect(table.getSelectedRow(), Math.max(0, table.getSelectedColumn()), true);
        show(table, cell.x, cell.y + cell.height);
    }

    private void show(Component at, int x, int y) {
        JPopupMenu menu = new JPopupMenu();
        for (Way way : offered()) {
            JMenuItem item = Lettering.plain(new JMenuItem());
            way.caption().on(item);
            item.addActionListener(e -> way.work().run());
            menu.add(item);
        }
        if (menu.getComponentCount() > 0) {
            menu.show(at, x, y);
        }
    }
}
