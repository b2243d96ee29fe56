package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import witnessmark.wording.Texts;

/** The results under the find field, in groups. It never takes the focus: the field keeps it. */
final class FindPopup {
    private static final int MOST_HIGH = 440;

    private final JComponent field;
    private final Texts texts;
    private final Runnable afterOpening;
    private final JPopupMenu popup = new JPopupMenu();
    private final DefaultListModel<FoundRow> rows = new DefaultListModel<>();
    private final JList<FoundRow> list = new JList<>(rows);
    private Object look = UIManager.getLookAndFeel();

    /** @param afterOpening run before going to what was chosen */
    FindPopup(JComponent field, Texts texts, Runnable afterOpening) {
        this.field = field;
        this.texts = texts;
        this.afterOpening = afterOpening;
        popup.setFocusable(false);
        popup.setLayout(new BorderLayout());
        list.setFocusable(false);
        list.getAccessibleContext().setAccessibleName(texts.get("shell.find.results"));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent e) {
                open();
            }
        });
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        popup.add(scroll);
    }

    void show(List<FoundRow> found) {
        follow();
        list.setCellRenderer(new FoundCell());
        rows.clear();
        rows.addAll(found);
        list.clearSelection();
        move(1);
        long count = found.stream().filter(row -> !row.isHeading()).count();
        String words = texts.get("shell.find.count", count);
        list.getAccessibleContext().setAccessibleDescription(words);
        field.getAccessibleContext().setAccessibleDescription(words);
        if (field.isShowing()) {
            int height = Math.min(list.getPreferredSize().height, UIScale.scale(MOST_HIGH));
            Insets around = popup.getInsets();
            popup.setPreferredSize(new Dimension(field.getWidth(), height + around.top + around.bottom));
            popup.show(field, 0, field.getHeight());
        }
    }

    /** A popup that is not showing is in no window: after a change of look it has to be updated by hand. */
    private void follow() {
        Object now = UIManager.getLookAndFeel();
        if (now != look) {
            look = now;
            SwingUtilities.updateComponentTreeUI(popup);
        }
    }

    void close() {
        popup.setVisible(false);
        rows.clear();
    }

    /** Moves the choice by one up or down, over headings. */
    void move(int step) {
        int at = list.getSelectedIndex() + step;
        while (at >= 0 && at < rows.size() && rows.get(at).isHeading()) {
            at += step;
        }
        if (at >= 0 && at < rows.size()) {
            list.setSelectedIndex(at);
            list.ensureIndexIsVisible(at);
        }
    }

    /** Goes to what is chosen. */
    void open() {
        FoundRow row = list.getSelectedValue();
        if (row == null) {
            return;
        }
        Runnable open = row.open();
        if (open != null) {
            afterOpening.run();
            open.run();
        }
    }

    JList<FoundRow> list() {
        return list;
    }
}
