package witnessmark.desktop.photos;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Palette;

/**
 * One photo as large as there is room, or closer. Plus, minus and the wheel look closer and from further away, 0 shows all;
 * dragging and Shift with the arrows move it.
 */
final class PhotoView extends JComponent {
    private static final double STEP = 1.25;
    private static final double CLOSEST = 16;
    /** No closer than nobody sees: steps there and back do not always meet. */
    private static final double WHOLE = 1.0001;

    private static final int MOVE = 60;

    private @Nullable BufferedImage image;
    private String said = "";
    private double closer = 1;
    private double middleX = 0.5;
    private double middleY = 0.5;

    PhotoView() {
        setFocusable(true);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_PLUS), "wm-closer", () -> closer(STEP, null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_ADD), "wm-closer2", () -> closer(STEP, null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_EQUALS), "wm-closer3", () -> closer(STEP, null));
        FormKeys.bind(this, Keys.shift(KeyEvent.VK_EQUALS), "wm-closer4", () -> closer(STEP, null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_MINUS), "wm-further", () -> closer(1 / STEP, null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_SUBTRACT), "wm-further2", () -> closer(1 / STEP, null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_0), "wm-all", this::all);
        FormKeys.bind(this, Keys.shift(KeyEvent.VK_LEFT), "wm-left", () -> pan(MOVE, 0));
        FormKeys.bind(this, Keys.shift(KeyEvent.VK_RIGHT), "wm-right", () -> pan(-MOVE, 0));
        FormKeys.bind(this, Keys.shift(KeyEvent.VK_UP), "wm-up", () -> pan(0, MOVE));
        FormKeys.bind(this, Keys.shift(KeyEvent.VK_DOWN), "wm-down", () -> pan(0, -MOVE));
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
    }

    private final class Mouse extends MouseAdapter {
        private Point before = new Point();

        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            before = e.getPoint();
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            pan(e.getX() - before.x, e.getY() - before.y);
            before = e.getPoint();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            closer(Math.pow(STEP, -e.getPreciseWheelRotation()), e.getPoint());
        }
    }

    /** Shows a photo, all of it. */
    void show(BufferedImage shown, String name) {
        image = shown;
        said = "";
        getAccessibleContext().setAccessibleName(name);
        all();
    }

    /** Says why there is none. */
    void none(String why) {
        image = null;
        said = why;
        getAccessibleContext().setAccessibleName(why);
        all();
    }

    /**
     * Shows all of it again.
     *
     * @return whether it was looked at more closely
     */
    boolean showWhole() {
        boolean was = closer > WHOLE;
        all();
        return was;
    }

    private void all() {
        closer = 1;
        middleX = 0.5;
        middleY = 0.5;
        repaint();
    }

    /** What is under the point stays there; the middle where there is no point. */
    private void closer(double by, @Nullable Point at) {
        BufferedImage shown = image;
        if (shown == null) {
            return;
        }
        double before = scale(shown);
        double next = Math.max(1, Math.min(CLOSEST, closer * by));
        double x = at == null ? 0 : at.x - getWidth() / 2.0;
        double y = at == null ? 0 : at.y - getHeight() / 2.0;
        closer = next;
        double after = scale(shown);
        middleX += (x / before - x / after) / shown.getWidth();
        middleY += (y / before - y / after) / shown.getHeight();
        hold();
    }

    private void pan(double x, double y) {
        BufferedImage shown = image;
        if (shown != null) {
            middleX -= x / (scale(shown) * shown.getWidth());
            middleY -= y / (scale(shown) * shown.getHeight());
            hold();
        }
    }

    private void hold() {
        double half = 0.5 / closer;
        middleX = Math.max(half, Math.min(1 - half, middleX));
        middleY = Math.max(half, Math.min(1 - half, middleY));
        repaint();
    }

    double closer() {
        return closer;
    }

    private double scale(BufferedImage shown) {
        return closer * Math.min((double) getWidth() / shown.getWidth(), (double) getHeight() / shown.getHeight());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Palette.TRACK.colour());
        g.fillRect(0, 0, getWidth(), getHeight());
        BufferedImage shown = image;
        if (shown != null) {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            double scale = scale(shown);
            g.translate(getWidth() / 2.0, getHeight() / 2.0);
            g.scale(scale, scale);
            g.translate(-middleX * shown.getWidth(), -middleY * shown.getHeight());
            g.drawImage(shown, 0, 0, null);
        } else if (!said.isEmpty()) {
            g.setColor(Palette.INK2.colour());
            g.setFont(getFont());
            int width = g.getFontMetrics().stringWidth(said);
            g.drawString(said, Math.max(UIScale.scale(8), (getWidth() - width) / 2), getHeight() / 2);
        }
        g.dispose();
        if (isFocusOwner()) {
            Color mark = Palette.MARK.colour();
            graphics.setColor(mark);
            graphics.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.ICON;
                }
            };
        }
        return accessibleContext;
    }
}
