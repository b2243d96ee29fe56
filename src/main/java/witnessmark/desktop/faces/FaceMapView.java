package witnessmark.desktop.faces;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.DrawnFaceMap;
import witnessmark.chart.FaceMap;
import witnessmark.chart.FacePlane;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Palette;

/**
 * A face map to look at and to mark. Left and Right go from reading to reading; a drag marks a low area, a click a place,
 * while something is written down.
 */
public final class FaceMapView extends JPanel {
    private static final double LEAST_DRAG = 4;
    /** In unscaled pixels. */
    private static final int HEIGHT = 344;

    private final transient Consumer<String> readout;
    private transient @Nullable FaceMap model;
    private transient boolean exhaustBelow;
    private transient boolean frontLeft = true;
    private transient @Nullable Consumer<Rectangle2D> marked;
    private transient @Nullable Point2D from;
    private transient @Nullable Point2D to;
    private int inHand = -1;

    /**
     * @param readout told the words of the reading in hand; empty for none
     */
    public FaceMapView(String name, Consumer<String> readout) {
        this.readout = readout;
        setOpaque(false);
        setFocusable(true);
        getAccessibleContext().setAccessibleName(name);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_RIGHT), "next", () -> choose(inHand + 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_LEFT), "before", () -> choose(Math.max(0, inHand - 1)));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_HOME), "first", () -> choose(0));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_END), "last", () -> choose(Integer.MAX_VALUE));
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    /**
     * @param below whether the exhaust edge is the lower one
     * @param left whether the front end lies to the left
     * @param marking told a place or an area somebody marks, in millimetres of the face; null while nothing is written
     */
    public void show(@Nullable FaceMap next, boolean below, boolean left, @Nullable Consumer<Rectangle2D> marking) {
        model = next;
        exhaustBelow = below;
        frontLeft = left;
        marked = marking;
        inHand = next == null ? -1 : Math.min(inHand, next.values().size() - 1);
        getAccessibleContext().setAccessibleDescription(next == null ? "" : next.words());
        revalidate();
        repaint();
    }

    /** Lights a reading; −1 for none. */
    void choose(int index) {
        FaceMap now = model;
        int last = now == null ? -1 : now.values().size() - 1;
        inHand = Math.min(index, last);
        readout.accept(now == null || inHand < 0 ? "" : now.values().get(inHand).readout());
        repaint();
    }

    int inHand() {
        return inHand;
    }

    @Nullable
    FaceMap model() {
        return model;
    }

    @Override
    public Dimension getPreferredSize() {
        return UIScale.scale(new Dimension(640, HEIGHT));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, UIScale.scale(HEIGHT));
    }

    private static int margin() {
        return UIScale.scale(22);
    }

    private FacePlane plane(FaceMap now) {
        int margin = margin();
        return new FacePlane(
                now.edges(),
                exhaustBelow,
                frontLeft,
                new Rectangle2D.Double(
                        UIScale.scale(4), margin, getWidth() - UIScale.scale(8), getHeight() - 2 * margin));
    }

    private DrawnFaceMap drawn(FaceMap now) {
        return new DrawnFaceMap(now, plane(now), FaceMapLook.now());
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        FaceMap now = model;
        int at = now == null ? -1 : at(now, e);
        return now == null || at < 0 ? null : now.values().get(at).readout();
    }

    private int at(FaceMap now, MouseEvent e) {
        return drawn(now).at(getFontMetrics(FaceMapLook.now().base().text()), e.getX(), e.getY());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        FaceMap now = model;
        if (now == null) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        Object hints = UIManager.get("awt.font.desktophints");
        if (hints instanceof Map<?, ?> map) {
            g.addRenderingHints(map);
        }
        drawn(now).draw(g, inHand);
        if (from != null && to != null) {
            g.setColor(Palette.MARK.colour());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            Rectangle2D box = new Rectangle2D.Double();
            box.setFrameFromDiagonal(from, to);
            g.draw(new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight()));
        }
        if (isFocusOwner()) {
            g.setColor(Palette.MARK.colour());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            float in = UIScale.scale(1f);
            g.draw(new Rectangle2D.Float(in, in, getWidth() - 2 * in, getHeight() - 2 * in));
        }
        g.dispose();
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            from = marked == null ? null : e.getPoint();
            to = from;
            FaceMap now = model;
            int found = now == null ? -1 : at(now, e);
            if (now != null && found >= 0) {
                from = null;
                again(now.values().get(found), found);
            }
        }

        /** A reading is put in hand; while something is written down, what was read before is read again there. */
        private void again(FaceMap.Value value, int index) {
            Consumer<Rectangle2D> told = marked;
            if (told != null && value.level() != FaceMap.Level.TYPED) {
                told.accept(new Rectangle2D.Double(value.x(), value.y(), 0, 0));
            } else {
                choose(index);
            }
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            if (from != null) {
                to = e.getPoint();
                repaint();
            }
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            Point2D begun = from;
            Consumer<Rectangle2D> told = marked;
            FaceMap now = model;
            from = null;
            to = null;
            repaint();
            if (begun == null || told == null || now == null) {
                return;
            }
            FacePlane plane = plane(now);
            Rectangle2D box = new Rectangle2D.Double();
            box.setFrameFromDiagonal(plane.face(begun.getX(), begun.getY()), plane.face(e.getX(), e.getY()));
            if (plane.has(box.getCenterX(), box.getCenterY())) {
                boolean dragged = begun.distance(e.getPoint()) >= UIScale.scale((float) LEAST_DRAG);
                told.accept(dragged ? box : new Rectangle2D.Double(box.getCenterX(), box.getCenterY(), 0, 0));
            }
        }
    }
}
