package witnessmark.desktop.strip;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.PartSpot;
import witnessmark.study.result.Outline;
import witnessmark.wording.PartPlaceWords;

/**
 * The part in hand laid before the one who looks, with the marks on it. A click says where the mark is; arrows move a cross, with Shift
 * by a little, and Enter puts it there. Delete takes the place away.
 */
final class PartDrawing extends JPanel {
    /** What keys and the mouse ask for. */
    interface Asked {
        /** @param place where it is, or null for nowhere in particular */
        void place(@Nullable PartSpot place);

        /** Back to the table, and nothing is put anywhere. */
        void back();
    }

    private static final int HEIGHT = 150;
    private static final int FLAT = 86;
    /** Of its width, with one key. */
    private static final double STEP = 0.1;

    private static final double BESIDE = 8;

    private final transient PartPlaceWords words;
    private final transient Asked asked;
    private transient Outline outline = Outline.NONE;
    private transient PartSpots spots = PartSpots.NONE;
    private transient @Nullable PartSpot cursor;

    PartDrawing(String name, PartPlaceWords words, Asked asked) {
        this.words = words;
        this.asked = asked;
        setOpaque(false);
        setFocusable(true);
        Lettering.plain(this);
        Styles.as(Styles.NOTE, this);
        getAccessibleContext().setAccessibleName(name);
        keys();
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                clicked(e);
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                cursor = spots.inHand() == null ? plane().middle() : spots.inHand();
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                cursor = null;
                repaint();
            }
        });
    }

    private void keys() {
        moves(KeyEvent.VK_RIGHT, 1, 0);
        moves(KeyEvent.VK_LEFT, -1, 0);
        moves(KeyEvent.VK_DOWN, 0, 1);
        moves(KeyEvent.VK_UP, 0, -1);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_ENTER), "put", () -> {
            if (cursor != null) {
                asked.place(cursor);
            }
        });
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_DELETE), "away", () -> asked.place(null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_BACK_SPACE), "away", () -> asked.place(null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_ESCAPE), "wm-back", asked::back);
    }

    private void moves(int key, int right, int down) {
        FormKeys.bind(this, Keys.plain(key), "move" + key, () -> move(right, down, STEP));
        FormKeys.bind(
                this,
                KeyStroke.getKeyStroke(key, InputEvent.SHIFT_DOWN_MASK),
                "nudge" + key,
                () -> move(right, down, STEP / 5));
    }

    private void move(int right, int down, double step) {
        PartPlane plane = plane();
        Point2D from = plane.point(cursor == null ? plane.middle() : cursor);
        cursor = plane.place(
                from.getX() + right * step * plane.box().getWidth(),
                from.getY() + down * step * plane.box().getHeight());
        tell();
        repaint();
    }

    private void clicked(MouseEvent e) {
        PartPlane plane = plane();
        if (isEnabled()
                && SwingUtilities.isLeftMouseButton(e)
                && plane.has(e.getX(), e.getY(), UIScale.scale((float) BESIDE))) {
            requestFocusInWindow();
            cursor = plane.place(e.getX(), e.getY());
            asked.place(cursor);
        }
    }

    /**
     * Shows a part; one of which nothing is drawn is not there.
     *
     * @param anew whether it is another mark; else a cross that is being moved stays where it is
     */
    void show(Outline next, PartSpots shown, boolean anew) {
        boolean other = next != outline;
        outline = next;
        spots = shown;
        setVisible(next != Outline.NONE);
        if (cursor != null && anew) {
            cursor = shown.inHand() == null ? plane().middle() : shown.inHand();
        }
        tell();
        if (other) {
            revalidate();
        }
        repaint();
    }

    private void tell() {
        String at = cursor == null ? "" : words.of(outline, cursor.around(), cursor.out());
        getAccessibleContext().setAccessibleDescription(at.isEmpty() ? spots.said() : at);
    }

    @Nullable
    PartSpot cursor() {
        return cursor;
    }

    PartPlane plane() {
        double line = getFontMetrics(getFont()).getHeight() + UIScale.scale(3f);
        double side = UIScale.scale(4f);
        return new PartPlane(
                outline,
                new Rectangle2D.Double(
                        side,
                        line,
                        Math.max(1, getWidth() - 2 * side),
                        Math.max(1, getHeight() - 2 * line - UIScale.scale(2f))));
    }

    @Override
    public Dimension getPreferredSize() {
        int lines = 2 * getFontMetrics(getFont()).getHeight();
        return new Dimension(UIScale.scale(HEIGHT), UIScale.scale(outline.disc() ? HEIGHT : FLAT) + lines);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (outline == Outline.NONE) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        if (UIManager.get("awt.font.desktophints") instanceof Map<?, ?> hints) {
            g.addRenderingHints(hints);
        }
        g.setFont(getFont());
        PartPainter painter = new PartPainter(plane(), g);
        painter.outline(
                words.quarters(outline),
                outline.disc() ? "" : words.edge(outline),
                outline == Outline.HALF ? words.farEdge(outline) : "");
        painter.marks(spots.spots(), isFocusOwner() ? cursor : null);
        if (isFocusOwner()) {
            g.setColor(Palette.MARK.colour());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            float in = UIScale.scale(1f);
            g.draw(new Rectangle2D.Float(in, in, getWidth() - 2 * in, getHeight() - 2 * in));
        }
        g.dispose();
    }
}
