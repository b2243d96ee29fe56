package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.ToolTipManager;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a drawing, one below the other. Up and Down or a click take one in hand, which is said; Enter or a second click
 * opens what it is of.
 */
public abstract class PaintedRows extends JPanel {
    private static final int WIDE = 600;
    private static final int ROW = 24;

    /**
     * A row.
     *
     * @param words all of it, for the readout, its tip and screen readers
     * @param record what it opens
     */
    public record Row(String words, String record) {}

    private final transient Consumer<String> open;
    private final transient Consumer<String> readout;
    private transient List<Row> rows = List.of();
    private String whole = "";
    private int chosen = -1;

    /**
     * @param open told the record of the row in hand
     * @param readout told its words
     */
    protected PaintedRows(String name, Consumer<String> open, Consumer<String> readout) {
        this.open = open;
        this.readout = readout;
        setOpaque(false);
        setFocusable(true);
        getAccessibleContext().setAccessibleName(name);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_DOWN), "next", () -> choose(chosen + 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_UP), "before", () -> choose(Math.max(0, chosen - 1)));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_ENTER), "open", this::openChosen);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                requestFocusInWindow();
                choose(at(e.getY()));
            }

            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2 && at(e.getY()) >= 0) {
                    openChosen();
                }
            }
        });
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

    /** Which row is at that height, in pixels from the top; -1 for none. */
    protected abstract int at(int y);

    /** How high all of it is at normal size. */
    protected abstract int high();

    /** @param chosen which row is in hand; -1 for none */
    protected abstract void paint(Graphics2D g, int chosen);

    /** @param words the whole of it in a sentence or two */
    protected final void show(List<Row> next, String words) {
        rows = List.copyOf(next);
        whole = words;
        chosen = Math.min(chosen, rows.size() - 1);
        getAccessibleContext().setAccessibleDescription(whole);
        revalidate();
        repaint();
    }

    /** Takes a row in hand, the last where there are not so many; -1 for none. */
    public final void choose(int row) {
        chosen = Math.min(row, rows.size() - 1);
        String said = chosen < 0 ? "" : rows.get(chosen).words();
        readout.accept(said);
        getAccessibleContext().setAccessibleDescription(said.isEmpty() ? whole : said);
        if (chosen >= 0) {
            scrollRectToVisible(new Rectangle(0, top(), 1, UIScale.scale(ROW)));
        }
        repaint();
    }

    private int top() {
        int y = 0;
        while (y < getHeight() && at(y) != chosen) {
            y++;
        }
        return y;
    }

    private void openChosen() {
        if (chosen >= 0) {
            open.accept(rows.get(chosen).record());
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return UIScale.scale(new Dimension(WIDE, high()));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        int at = at(e.getY());
        return at < 0 ? null : rows.get(at).words();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        paint(g, chosen);
        FocusRing.paint(this, g);
        g.dispose();
    }
}
