package witnessmark.desktop.bench;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import witnessmark.desktop.task.EventThread;

/**
 * Boxes beside each other as on a printed sheet, in the order they were put in, row after row. Their left edges stand in
 * columns; a wide box takes several.
 */
final class Blocks extends JPanel {
    private static final int COLUMN = 66;
    private static final int GAP = 16;
    private static final int BETWEEN = 12;

    /** @param width they will most likely have: what they need is right at once then; 0 where nobody knows */
    Blocks(int width) {
        setOpaque(false);
        setLayout(new Flowing());
        setSize(width, 0);
    }

    /** The height goes with the width. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = needs(width) != needs(getWidth());
        super.setBounds(x, y, width, height);
        if (other) {
            revalidate();
            EventThread.later(this::revalidate); // what lays this out now calls itself valid when it is done
        }
    }

    private int needs(int width) {
        return places(width).stream()
                .mapToInt(place -> place.y + place.height)
                .max()
                .orElse(0);
    }

    private List<Rectangle> places(int width) {
        int gap = UIScale.scale(GAP);
        int columns = Math.max(1, (width + gap) / (UIScale.scale(COLUMN) + gap));
        int step = (width + gap) / columns;
        List<Rectangle> places = new ArrayList<>();
        int column = 0;
        int top = 0;
        int high = 0;
        for (Component box : getComponents()) {
            Dimension wanted = box.getPreferredSize();
            int takes = Math.min(columns, Math.max(1, (wanted.width + gap + step - 1) / step));
            if (column + takes > columns) {
                column = 0;
                top += high + UIScale.scale(BETWEEN);
                high = 0;
            }
            places.add(new Rectangle(column * step, top, takes * step - gap, wanted.height));
            high = Math.max(high, wanted.height);
            column += takes;
        }
        return places;
    }

    private final class Flowing implements LayoutManager {
        @Override
        public void addLayoutComponent(String name, Component component) {
            // boxes are known by their order
        }

        @Override
        public void removeLayoutComponent(Component component) {
            // boxes are known by their order
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            return new Dimension(UIScale.scale(COLUMN), needs(parent.getWidth()));
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, 0);
        }

        @Override
        public void layoutContainer(Container parent) {
            List<Rectangle> places = places(parent.getWidth());
            for (int i = 0; i < places.size(); i++) {
                parent.getComponent(i).setBounds(places.get(i));
            }
        }
    }
}
