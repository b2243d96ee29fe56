package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Point;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.event.ChangeListener;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.task.EventThread;

/**
 * The main thing of a page with something beside it: at the right while there is room for both, below it in a narrow
 * window or at a large size. Put the whole in a {@link ScrollPage}.
 */
public final class SideBySide extends JPanel {
    private static final int GAP = 16;

    private final JComponent main;
    private final JComponent side;
    private final int sideWidth;
    private final int from;
    private final transient ChangeListener scrolled = e -> doLayout();
    private boolean mainStays;
    private @Nullable JViewport over;

    /**
     * @param sideWidth of what stands beside, in unscaled pixels
     * @param from the width of both together from which they stand side by side, in unscaled pixels
     */
    public SideBySide(JComponent main, JComponent side, int sideWidth, int from) {
        this.main = main;
        this.side = side;
        this.sideWidth = sideWidth;
        this.from = from;
        setOpaque(false);
        add(main);
        add(side);
        setLayout(new Placing());
    }

    /** Where both stand side by side, the main one stays in view, as high as the page is seen, while the other scrolls. */
    public SideBySide mainStays() {
        mainStays = true;
        return this;
    }

    @Override
    public void addNotify() {
        super.addNotify();
        if (mainStays && SwingUtilities.getAncestorOfClass(JViewport.class, this) instanceof JViewport page) {
            over = page;
            page.addChangeListener(scrolled);
        }
    }

    @Override
    public void removeNotify() {
        JViewport page = over;
        if (page != null) {
            page.removeChangeListener(scrolled);
            over = null;
        }
        super.removeNotify();
    }

    /** What is seen of a main thing that scrolls by itself beside the other is seen of it above the other too, and back. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean beside = isBeside();
        boolean shown = getWidth() > 0 && main.isShowing();
        super.setBounds(x, y, width, height);
        if (shown && beside != isBeside() && main instanceof ScrollPage own && over != null) {
            carry(own.getViewport(), over, beside);
        }
    }

    private void carry(JViewport own, JViewport page, boolean beside) {
        int above = SwingUtilities.convertPoint(this, 0, 0, page.getView()).y;
        int whole = page.getViewPosition().y;
        int seen = beside ? whole - main.getY() + own.getViewPosition().y : whole;
        EventThread.later(() -> {
            page.validate();
            page.setViewPosition(new Point(0, beside ? seen : Math.min(seen, above)));
            own.setViewPosition(new Point(0, beside ? 0 : Math.max(0, seen - above)));
        });
    }

    public boolean isBeside() {
        return UIScale.unscale(getWidth()) >= from;
    }

    /** Main and side, each as high as the two need; the main one takes what height is left. */
    private final class Placing implements LayoutManager {
        @Override
        public void addLayoutComponent(String name, Component component) {
            // both are known
        }

        @Override
        public void removeLayoutComponent(Component component) {
            // neither is ever taken out
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            Dimension first = main.getPreferredSize();
            Dimension second = side.getPreferredSize();
            int gap = UIScale.scale(GAP);
            if (isBeside() || parent.getWidth() == 0) {
                int width = first.width + gap + UIScale.scale(sideWidth);
                return new Dimension(width, mainStays ? second.height : Math.max(first.height, second.height));
            }
            return new Dimension(Math.max(first.width, second.width), first.height + gap + second.height);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, 0);
        }

        @Override
        public void layoutContainer(Container parent) {
            int gap = UIScale.scale(GAP);
            if (isBeside()) {
                int right = UIScale.scale(sideWidth);
                int left = parent.getWidth() - right - gap;
                Rectangle seen = getVisibleRect();
                boolean stays = mainStays && over != null && !seen.isEmpty();
                main.setBounds(0, stays ? seen.y : 0, left, stays ? seen.height : parent.getHeight());
                side.setBounds(left + gap, 0, right, parent.getHeight());
            } else {
                int below = side.getPreferredSize().height;
                int above = Math.max(main.getPreferredSize().height, parent.getHeight() - gap - below);
                main.setBounds(0, 0, parent.getWidth(), above);
                side.setBounds(0, above + gap, parent.getWidth(), below);
            }
        }
    }
}
