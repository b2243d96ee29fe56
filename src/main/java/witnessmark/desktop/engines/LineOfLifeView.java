package witnessmark.desktop.engines;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.wording.Texts;

/**
 * The line of an engine's life. Left and Right go from entry to entry, Plus and Minus and the wheel look closer and
 * from further away, 0 shows all, Enter opens the entry in hand.
 */
final class LineOfLifeView extends JPanel {
    private static final double CLOSER = 0.7;
    private static final double NEAR = 6;

    private final transient LineOfLifeModel model;
    private final transient LineOfLifePainter painter;
    private final transient Runnable told;
    private int dragged = -1;

    /**
     * @param told run whenever the entry in hand changes
     * @param open told the entry that is opened
     */
    LineOfLifeView(
            Texts texts, LineOfLifeModel model, LineOfLifePainter painter, Runnable told, Consumer<LifeMark> open) {
        this.model = model;
        this.painter = painter;
        this.told = told;
        setOpaque(false);
        setFocusable(true);
        getAccessibleContext().setAccessibleName(texts.get("engines.line"));
        bind(Keys.plain(KeyEvent.VK_LEFT), "before", () -> model.step(-1));
        bind(Keys.plain(KeyEvent.VK_RIGHT), "next", () -> model.step(1));
        bind(Keys.plain(KeyEvent.VK_HOME), "first", model::toFirst);
        bind(Keys.plain(KeyEvent.VK_END), "last", model::toLast);
        for (int key : new int[] {KeyEvent.VK_PLUS, KeyEvent.VK_ADD, KeyEvent.VK_EQUALS}) {
            bind(Keys.plain(key), "closer", () -> model.zoom(CLOSER, about()));
        }
        for (int key : new int[] {KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT}) {
            bind(Keys.plain(key), "further", () -> model.zoom(1 / CLOSER, about()));
        }
        for (int key : new int[] {KeyEvent.VK_0, KeyEvent.VK_NUMPAD0}) {
            bind(Keys.plain(key), "all", model::showAll);
        }
        bind(Keys.plain(KeyEvent.VK_ENTER), "open", () -> openChosen(open));
        Pointer pointer = new Pointer(open);
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        addMouseWheelListener(pointer);
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
    }

    /** Says the readout to screen readers and draws anew. */
    void changed(String readout) {
        getAccessibleContext().setAccessibleDescription(readout);
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(600), UIScale.scale(LineOfLifePainter.HEIGHT));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, UIScale.scale(LineOfLifePainter.HEIGHT));
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        int at = at(e);
        return at < 0 ? null : model.marks().get(at).words();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        painter.paint(g, getWidth(), getHeight(), isFocusOwner());
        g.dispose();
    }

    /** The share that stays where it is when looking closer: the entry in hand, else the middle. */
    private double about() {
        LifeMark chosen = model.chosen();
        double share = chosen == null ? 0.5 : model.share(chosen.from());
        return share < 0 || share > 1 ? 0.5 : share;
    }

    private void openChosen(Consumer<LifeMark> open) {
        LifeMark chosen = model.chosen();
        if (chosen != null) {
            open.accept(chosen);
        }
    }

    private int at(MouseEvent e) {
        double share = painter.share(e.getX(), getWidth());
        return model.nearest(share, UIScale.scale((float) NEAR) / Math.max(1, getWidth()));
    }

    private void bind(KeyStroke key, String name, Runnable work) {
        FormKeys.bind(this, key, name, () -> {
            work.run();
            told.run();
        });
    }

    /** Choosing, moving along and looking closer with the mouse. */
    private final class Pointer extends MouseAdapter {
        private final Consumer<LifeMark> open;

        Pointer(Consumer<LifeMark> open) {
            this.open = open;
        }

        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            dragged = e.getX();
            int at = at(e);
            if (at >= 0) {
                model.choose(at);
                told.run();
            }
        }

        @Override
        public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2) {
                int at = at(e);
                if (at < 0) {
                    model.showAll();
                    told.run();
                } else {
                    open.accept(model.marks().get(at));
                }
            }
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            model.pan((double) (dragged - e.getX()) / Math.max(1, getWidth()));
            dragged = e.getX();
            repaint();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            double factor = Math.pow(CLOSER, -e.getPreciseWheelRotation());
            model.zoom(factor, painter.share(e.getX(), getWidth()));
            repaint();
        }
    }
}
