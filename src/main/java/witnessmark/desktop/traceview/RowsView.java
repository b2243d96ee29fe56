package witnessmark.desktop.traceview;

import com.formdev.flatlaf.util.UIScale;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.DrawnTraceRows;
import witnessmark.chart.Stretch;
import witnessmark.chart.TraceRows;
import witnessmark.chart.TraceStyle;
import witnessmark.desktop.form.ChartLook;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Palette;

/**
 * Rows of a trace that are looked at and gone over. Left and Right move the cross-hair, with Shift what is seen; Up and
 * Down go from mark to mark, Home and End to the ends; Plus, Minus and the wheel look closer and from further away, 0
 * shows all; comma and full stop draw what is laid over it earlier and later. Dragging moves along, with Shift it shows the stretch dragged over.
 */
final class RowsView extends JPanel {
    private static final double CLOSER = 0.7;
    private static final double STEP = 0.25;
    private static final int INSET = 4;

    private final transient Told told;
    private transient @Nullable DrawnTraceRows drawn;
    private transient TraceRows.@Nullable Mark chosen;
    private transient @Nullable BufferedImage base;
    private double hair = -1;
    private double dragFrom = Double.NaN;
    private double dragTo = Double.NaN;
    private int dragged;

    /** Is told what somebody does. */
    interface Told {
        /** The cross-hair stands elsewhere. */
        void hair(double seconds);

        /** Another stretch is seen. */
        void seen(Stretch stretch);

        /** On to the next mark, or back to the one before. */
        void mark(int by);

        /** What is laid over it is drawn later by so much, seconds; below 0 earlier. */
        void shiftBy(double seconds);
    }

    RowsView(Told told) {
        this.told = told;
        setOpaque(false);
        setFocusable(true);
        bindKeys();
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
    }

    /**
     * Shows other rows.
     *
     * @param same whether what is seen and the cross-hair stay
     */
    void show(TraceRows rows, boolean same) {
        DrawnTraceRows next = new DrawnTraceRows(rows, style());
        DrawnTraceRows before = drawn;
        if (same && before != null && !before.seen().isWhole()) {
            next.seen().see(before.seen().from(), before.seen().to());
        }
        if (!same) {
            hair = -1;
            chosen = null;
        }
        drawn = next;
        getAccessibleContext().setAccessibleName(rows.finding());
        getAccessibleContext().setAccessibleDescription(rows.description());
        changed();
    }

    void clear() {
        drawn = null;
        changed();
    }

    @Nullable
    DrawnTraceRows drawn() {
        return drawn;
    }

    /** Where the cross-hair stands, seconds; below 0 when it stands nowhere. */
    double hair() {
        return hair;
    }

    /** Takes a mark in hand, brings it into view with the cross-hair on it. */
    void choose(TraceRows.@Nullable Mark mark) {
        chosen = mark;
        DrawnTraceRows now = drawn;
        if (now != null && mark != null) {
            now.seen().bringIntoView(mark.at());
            changed();
            hair(now.rows().worst(mark));
            told.seen(now.seen());
        } else {
            changed();
        }
    }

    /** Looks closely at a mark: some seconds before it and after it. */
    void closeTo(TraceRows.Mark mark) {
        DrawnTraceRows now = drawn;
        if (now != null) {
            double around = Math.max(4, 2 * mark.lasted());
            now.seen().see(mark.at() - around, mark.at() + mark.lasted() + around);
        }
        choose(mark);
    }

    /** As it leaves the program: on paper, as wide as the window's, what is seen of it. */
    @Nullable
    BufferedImage picture() {
        DrawnTraceRows now = drawn;
        if (now == null) {
            return null;
        }
        DrawnTraceRows paper = new DrawnTraceRows(now.rows(), TraceStyle.onPaper(ChartLook.onPaper()));
        paper.seen().see(now.seen().from(), now.seen().to());
        return paper.picture(960, 160 + 110 * Math.max(1, now.rows().rows().size()), 2);
    }

    private static TraceStyle style() {
        return new TraceStyle(
                ChartLook.now(),
                Palette.OVER.colour(),
                Palette.OVER_FILL.mixedWith(Palette.SHEET, 0.22),
                Palette.INK.colour());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        base = null;
    }

    @Override
    public Dimension getPreferredSize() {
        return UIScale.scale(new Dimension(600, 380));
    }

    @Override
    public Dimension getMinimumSize() {
        return UIScale.scale(new Dimension(0, 170));
    }

    private void changed() {
        base = null;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        DrawnTraceRows now = drawn;
        Graphics2D g = (Graphics2D) graphics.create();
        if (now != null) {
            paintRows(g, now);
            if (hair >= 0) {
                now.hair(g, hair);
            }
            paintDrag(g, now);
        }
        if (isFocusOwner()) {
            g.setColor(Palette.MARK.colour());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            float edge = UIScale.scale(1f);
            g.draw(new Rectangle2D.Float(edge, edge, getWidth() - 2 * edge, getHeight() - 2 * edge));
        }
        g.dispose();
    }

    /** All but the cross-hair is drawn once and kept until something of it changes, so that the cross-hair costs nothing. */
    private void paintRows(Graphics2D g, DrawnTraceRows now) {
        AffineTransform to = g.getTransform();
        double scale = Math.max(to.getScaleX(), 1);
        int wide = Math.max(1, (int) Math.ceil(getWidth() * scale));
        int high = Math.max(1, (int) Math.ceil(getHeight() * scale));
        BufferedImage image = base;
        if (image == null || image.getWidth() != wide || image.getHeight() != high) {
            image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
            Graphics2D on = image.createGraphics();
            on.scale(scale, scale);
            on.setColor(Palette.SHEET.colour());
            on.fillRect(0, 0, getWidth() + 1, getHeight() + 1);
            now.restyle(style());
            int inset = UIScale.scale(INSET);
            now.draw(
                    on,
                    new Rectangle2D.Double(inset, inset, getWidth() - 2.0 * inset, getHeight() - 2.0 * inset),
                    chosen);
            on.dispose();
            base = image;
        }
        Graphics2D device = (Graphics2D) g.create();
        device.scale(1 / scale, 1 / scale);
        device.drawImage(image, 0, 0, null);
        device.dispose();
    }

    private void paintDrag(Graphics2D g, DrawnTraceRows now) {
        if (Double.isNaN(dragFrom) || Double.isNaN(dragTo) || now.places().isEmpty()) {
            return;
        }
        double left = now.x(Math.min(dragFrom, dragTo));
        double right = now.x(Math.max(dragFrom, dragTo));
        g.setColor(Palette.MARK.colour());
        g.setComposite(AlphaComposite.SrcOver.derive(0.16f));
        Rectangle2D first = now.places().get(0);
        Rectangle2D last = now.places().get(now.places().size() - 1);
        g.fill(new Rectangle2D.Double(left, first.getY(), right - left, last.getMaxY() - first.getY()));
        g.setComposite(AlphaComposite.SrcOver);
    }

    // What somebody does

    void hair(double seconds) {
        DrawnTraceRows now = drawn;
        if (now == null) {
            return;
        }
        hair = Math.max(0, Math.min(seconds, now.rows().last()));
        repaint();
        told.hair(hair);
    }

    private void bindKeys() {
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_LEFT), "before", () -> step(-1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_RIGHT), "next", () -> step(1));
        FormKeys.bind(this, Keys.shift(KeyEvent.VK_LEFT), "along-back", () -> look(seen -> seen.pan(-STEP)));
        FormKeys.bind(this, Keys.shift(KeyEvent.VK_RIGHT), "along", () -> look(seen -> seen.pan(STEP)));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_UP), "mark-before", () -> told.mark(-1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_DOWN), "mark-next", () -> told.mark(1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_COMMA), "earlier", () -> told.shiftBy(-pixel()));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_PERIOD), "later", () -> told.shiftBy(pixel()));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_HOME), "first", () -> go(0));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_END), "last", () -> go(Double.MAX_VALUE));
        for (int key : new int[] {KeyEvent.VK_PLUS, KeyEvent.VK_ADD, KeyEvent.VK_EQUALS}) {
            FormKeys.bind(this, Keys.plain(key), "closer", () -> zoom(CLOSER));
        }
        FormKeys.bind(this, KeyStroke.getKeyStroke('+'), "closer", () -> zoom(CLOSER));
        for (int key : new int[] {KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT}) {
            FormKeys.bind(this, Keys.plain(key), "further", () -> zoom(1 / CLOSER));
        }
        for (int key : new int[] {KeyEvent.VK_0, KeyEvent.VK_NUMPAD0}) {
            FormKeys.bind(this, Keys.plain(key), "all", () -> look(Stretch::showAll));
        }
    }

    /**
     * Shows all of it again.
     *
     * @return whether it was looked at more closely
     */
    boolean showWhole() {
        DrawnTraceRows now = drawn;
        boolean closer = now != null && !now.seen().isWhole();
        if (closer) {
            look(Stretch::showAll);
        }
        return closer;
    }

    private void zoom(double factor) {
        look(seen -> {
            boolean inSight = hair >= seen.from() && hair <= seen.to();
            seen.zoom(factor, inSight ? hair : (seen.from() + seen.to()) / 2);
        });
    }

    /** The cross-hair goes on by as much as can be seen. */
    private void step(int by) {
        DrawnTraceRows now = drawn;
        if (now == null || now.places().isEmpty()) {
            return;
        }
        boolean away = hair < now.seen().from() || hair > now.seen().to();
        go(away ? (now.seen().from() + now.seen().to()) / 2 : hair + by * pixel());
    }

    /** As much time as can just be seen, seconds. */
    private double pixel() {
        DrawnTraceRows now = drawn;
        return now == null || now.places().isEmpty()
                ? 0
                : now.seen().width() / now.places().get(0).getWidth();
    }

    private void go(double seconds) {
        DrawnTraceRows now = drawn;
        if (now != null) {
            double to = Math.max(0, Math.min(seconds, now.rows().last()));
            if (to < now.seen().from() || to > now.seen().to()) {
                look(seen -> seen.bringIntoView(to));
            }
            hair(to);
        }
    }

    private void look(java.util.function.Consumer<Stretch> work) {
        DrawnTraceRows now = drawn;
        if (now != null) {
            work.accept(now.seen());
            changed();
            told.seen(now.seen());
        }
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            dragged = e.getX();
            DrawnTraceRows now = drawn;
            boolean box = (e.getModifiersEx() & InputEvent.SHIFT_DOWN_MASK) != 0;
            dragFrom = box && now != null ? now.time(e.getX()) : Double.NaN;
            dragTo = Double.NaN;
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            double from = Math.min(dragFrom, dragTo);
            double to = Math.max(dragFrom, dragTo);
            dragFrom = Double.NaN;
            dragTo = Double.NaN;
            if (to > from) {
                look(seen -> seen.see(from, to));
            }
        }

        @Override
        public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2) {
                look(Stretch::showAll);
            }
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            DrawnTraceRows now = drawn;
            if (now == null || now.places().isEmpty()) {
                return;
            }
            if (Double.isNaN(dragFrom)) {
                double wide = now.places().get(0).getWidth();
                look(seen -> seen.pan((dragged - e.getX()) / wide));
                dragged = e.getX();
            } else {
                dragTo = now.time(e.getX());
                repaint();
            }
        }

        @Override
        public void mouseMoved(MouseEvent e) {
            DrawnTraceRows now = drawn;
            if (now != null && !now.places().isEmpty()) {
                double at = now.time(e.getX());
                if (at >= now.seen().from() && at <= now.seen().to()) {
                    hair(at);
                }
            }
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            DrawnTraceRows now = drawn;
            if (now != null) {
                look(seen -> seen.zoom(Math.pow(CLOSER, -e.getPreciseWheelRotation()), now.time(e.getX())));
            }
        }
    }
}
