package witnessmark.desktop.photos;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;

/** Small pictures side by side, as many in a row as there is room. Arrows go from one to the next, Enter opens. */
final class PhotoList extends JList<PhotoLine> {
    private final DefaultListModel<PhotoLine> lines = new DefaultListModel<>();

    private final SmallPictures pictures;

    PhotoList(SmallPictures pictures, Consumer<PhotoLine> open) {
        this.pictures = pictures;
        setModel(lines);
        Lettering.plain(this);
        setLayoutOrientation(HORIZONTAL_WRAP);
        setVisibleRowCount(0);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setOpaque(false);
        setCellRenderer(new PhotoCell(pictures));
        sized();
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_ENTER), "wm-open", () -> opened(open));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    opened(open);
                }
            }
        });
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                revalidate(); // another width, another number of rows
            }
        });
    }

    private void opened(Consumer<PhotoLine> open) {
        PhotoLine line = getSelectedValue();
        if (line != null) {
            open.accept(line);
        }
    }

    /** Shows these; the one in hand stays in hand. */
    void show(List<PhotoLine> now) {
        PhotoLine before = getSelectedValue();
        lines.clear();
        lines.addAll(now);
        for (int i = 0; i < now.size(); i++) {
            if (before != null && now.get(i).id().equals(before.id())) {
                setSelectedIndex(i);
            }
        }
        if (getSelectedIndex() < 0 && !now.isEmpty()) {
            setSelectedIndex(0);
        }
        revalidate();
        repaint();
    }

    @Nullable
    PhotoLine chosen() {
        return getSelectedValue();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (lines != null) {
            sized();
        }
    }

    @Override
    protected void paintComponent(Graphics g) {
        pictures.inSight(getLastVisibleIndex() - getFirstVisibleIndex() + 1);
        super.paintComponent(g);
    }

    private void sized() {
        setFixedCellWidth(UIScale.scale(PhotoCell.WIDE));
        setFixedCellHeight(UIScale.scale(PhotoCell.HIGH));
    }

    @Override
    public Dimension getPreferredSize() {
        int wide = Math.max(1, getFixedCellWidth());
        int across = Math.max(1, getWidth() / wide);
        int rows = (lines.size() + across - 1) / across;
        return new Dimension(wide, rows * getFixedCellHeight());
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }
}
