package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import witnessmark.desktop.form.Kept;
import witnessmark.wording.Texts;

/** The results under the find field, in groups. It never takes the focus: the field keeps it. */
final class FindPopup {
    private static final int MOST_HIGH = 440;
    private static final int WIDE = 560;

    private final JComponent field;
    private final Texts texts;
    private final Runnable afterOpening;
    private final JPopupMenu popup = new JPopupMenu();
    private final DefaultListModel<FoundRow> rows = new DefaultListModel<>();
    private final JList<FoundRow> list = new Rows(rows);

    /** @param afterOpening run before going to what was chosen */
    FindPopup(JComponent field, Texts texts, Runnable afterOpening) {
        this.field = field;
        this.texts = texts;
        this.afterOpening = afterOpening;
        Kept.leaves(popup);
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

    /** The first of each group, and where there are more a row that shows all of it. */
    void show(List<FoundGroup> groups) {
        List<FoundRow> found = new ArrayList<>();
        for (FoundGroup group : groups) {
            found.add(FoundRow.heading(group.heading()));
            group.all().stream().limit(FoundGroup.FIRST).map(this::row).forEach(found::add);
            if (group.hasMore()) {
                found.add(FoundRow.all(group.showAll(), () -> showAll(group)));
            }
        }
        int all = groups.stream().mapToInt(group -> group.all().size()).sum();
        int shown = groups.stream()
                .mapToInt(group -> Math.min(FoundGroup.FIRST, group.all().size()))
                .sum();
        show(found, shown == all ? texts.get("shell.find.count", all) : texts.get("shell.find.countOf", all, shown));
        move(1);
    }

    /** One sentence in place of results. */
    void say(String sentence) {
        show(List.of(FoundRow.heading(sentence)), sentence);
    }

    /** All of one group, from the first that was not shown before. */
    private void showAll(FoundGroup group) {
        List<FoundRow> found = new ArrayList<>();
        found.add(FoundRow.heading(group.heading()));
        group.all().stream().map(this::row).forEach(found::add);
        show(found, texts.get("shell.find.count", group.all().size()));
        choose(FoundGroup.FIRST + 1);
    }

    private FoundRow row(Found found) {
        return found.within().isEmpty() ? FoundRow.of(found) : FoundRow.holding(found, () -> showWithin(found));
    }

    /** What one of those found holds, in the place of all results. */
    private void showWithin(Found found) {
        List<FoundRow> within = new ArrayList<>();
        within.add(FoundRow.heading(found.title()));
        found.within().stream().map(this::row).forEach(within::add);
        show(within, texts.get("shell.find.count", found.within().size()));
        move(1);
    }

    private void show(List<FoundRow> found, String words) {
        Kept.returns(popup);
        list.setCellRenderer(new FoundCell());
        rows.clear();
        rows.addAll(found);
        list.clearSelection();
        list.getAccessibleContext().setAccessibleDescription(words);
        field.getAccessibleContext().setAccessibleDescription(words);
        if (field.isShowing()) {
            fit();
        }
    }

    /** As high as its rows, as far as there is room. A popup that is up already takes another size only when packed. */
    private void fit() {
        int height = Math.min(list.getPreferredSize().height, UIScale.scale(MOST_HIGH));
        Insets around = popup.getInsets();
        int width = Math.max(field.getWidth(), UIScale.scale(WIDE));
        popup.setPreferredSize(new Dimension(width, height + around.top + around.bottom));
        if (popup.isVisible()) {
            popup.pack();
        } else {
            popup.show(field, field.getWidth() - width, field.getHeight());
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
            choose(at);
        }
    }

    private void choose(int at) {
        list.setSelectedIndex(at);
        list.ensureIndexIsVisible(at);
    }

    /** Goes to what is chosen, or shows all of a group. */
    void open() {
        FoundRow row = list.getSelectedValue();
        if (row == null) {
            return;
        }
        Runnable open = row.open();
        if (open != null && !row.stays()) {
            afterOpening.run();
        }
        if (open != null) {
            open.run();
        }
    }

    JPopupMenu popup() {
        return popup;
    }

    JList<FoundRow> list() {
        return list;
    }

    /** Never wider than the popup: what has no room is cut with an ellipsis. */
    private static final class Rows extends JList<FoundRow> {
        Rows(DefaultListModel<FoundRow> rows) {
            super(rows);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    }
}
