package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A page with another beside it, each scrolling by itself; where there is no room for both, one of the two. */
public final class TwoPanes extends JPanel {
    private static final int SIDE = 388;
    private static final int GAP = 16;
    private static final int BOTH_FROM = 960;

    private final JComponent main;
    private final JComponent side;
    private boolean sideFirst;

    public TwoPanes(JComponent main, JComponent side) {
        this.main = main;
        this.side = side;
        setOpaque(false);
        add(main);
        add(side);
        setLayout(new Placing());
    }

    /** Whether there is room for both. */
    public boolean both() {
        return UIScale.unscale(getWidth()) >= BOTH_FROM;
    }

    /** Whether the page beside it is what is seen where there is no room for both. */
    public boolean sideFirst() {
        return sideFirst;
    }

    public void sideFirst(boolean yes) {
        sideFirst = yes;
        revalidate();
        repaint();
    }

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
            return new Dimension(
                    main.getPreferredSize().width + UIScale.scale(SIDE + GAP),
                    Math.max(main.getPreferredSize().height, side.getPreferredSize().height));
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, 0);
        }

        @Override
        public void layoutContainer(Container parent) {
            int wide = parent.getWidth();
            int high = parent.getHeight();
            boolean both = both();
            main.setVisible(both || !sideFirst);
            side.setVisible(both || sideFirst);
            int right = both ? UIScale.scale(SIDE) : wide;
            int left = both ? wide - right - UIScale.scale(GAP) : wide;
            main.setBounds(0, 0, left, high);
            side.setBounds(wide - right, 0, right, high);
        }
    }
}
