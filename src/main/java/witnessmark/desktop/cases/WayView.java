package witnessmark.desktop.cases;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.task.EventThread;
import witnessmark.wording.WayLines;

/** An engine's way up to a failure in one band. Left and Right go from day to day. */
final class WayView extends JPanel {
    private static final int WIDTH = 514;

    private final transient Consumer<String> readout;
    private transient WayLines lines = WayLines.NONE;
    private int inHand = -1;

    /** @param readout told the words of the day in hand; empty for none */
    WayView(Consumer<String> readout) {
        this.readout = readout;
        setOpaque(false);
        setFocusable(true);
        Lettering.plain(this);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_RIGHT), "next", () -> choose(inHand + 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_LEFT), "before", () -> choose(inHand - 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_HOME), "first", () -> choose(0));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_END), "last", () -> choose(Integer.MAX_VALUE));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                requestFocusInWindow();
                choose(first() + painter().at(e.getX()));
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                if (inHand < 0) {
                    choose(Integer.MAX_VALUE);
                }
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    void show(WayLines next) {
        if (!next.equals(lines)) {
            lines = next;
            inHand = -1;
        }
        getAccessibleContext().setAccessibleName(next.heading());
        getAccessibleContext().setAccessibleDescription(next.said());
        revalidate();
        repaint();
    }

    /** Puts a day in hand; what has no room at the left is reached in the table. */
    void choose(int point) {
        int last = lines.points().size() - 1;
        inHand = Math.min(Math.max(first(), point), last);
        String said = inHand < 0 ? "" : lines.points().get(inHand).whole();
        readout.accept(said);
        getAccessibleContext().setAccessibleDescription(said.isEmpty() ? lines.said() : said);
        repaint();
    }

    /** How many days have no room at the left. */
    int leftOut() {
        return first();
    }

    /** More or fewer have room in another width. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            EventThread.later(this::fit);
        }
    }

    /** Other words have room in another width, and take another height. */
    private void fit() {
        if (getPreferredSize().height != getHeight()) {
            revalidate();
        }
        if (inHand < 0) {
            readout.accept("");
        }
    }

    private int first() {
        return lines.points().isEmpty() ? 0 : painter().leftOut(lines.points().size());
    }

    private WayPainter painter() {
        Font text = UIManager.getFont("Label.font");
        Font small = text.deriveFont(text.getSize2D() * 12 / 13);
        int width = getWidth() == 0 ? UIScale.scale(WIDTH) : getWidth();
        return new WayPainter(lines.points(), small.deriveFont(Font.BOLD), small, this::getFontMetrics, width);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(WIDTH), (int) Math.ceil(painter().height()));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        return lines.points().isEmpty()
                ? null
                : lines.points().get(first() + painter().at(e.getX())).whole();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (lines.points().isEmpty()) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        if (UIManager.get("awt.font.desktophints") instanceof Map<?, ?> hints) {
            g.addRenderingHints(hints);
        }
        painter().paint(g, inHand < 0 ? -1 : inHand - first(), isFocusOwner());
        g.dispose();
    }
}
