package witnessmark.desktop.strip;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.EventThread;
import witnessmark.domain.HowMarked;

/**
 * Places down, positions across. Arrows go from position to position; 0 to 4 say how far it has gone, a letter begins the mark,
 * Enter goes to the fields beside, Delete takes away.
 */
final class StripTable extends JPanel {
    /** What keys and the mouse ask for. */
    interface Asked {
        /** Another position is in hand. */
        void inHand();

        void how(HowMarked how);

        /** @param letter with which the mark begins, or null to open the fields */
        void mark(@Nullable Character letter);

        void takeAway();
    }

    private static final int WIDTH = 560;

    private final transient Asked asked;
    private transient StripLines lines = StripLines.NONE;
    private int row;
    private int column = 1;
    /** The column that was gone to: a line that has fewer does not change it. */
    private int wanted = 1;

    StripTable(String name, Asked asked) {
        this.asked = asked;
        setOpaque(false);
        setFocusable(true);
        Lettering.plain(this);
        Styles.as(Styles.FIELD_LABEL, this);
        getAccessibleContext().setAccessibleName(name);
        setToolTipText("");
        ToolTipManager.sharedInstance().registerComponent(this);
        keys();
        addMouseListener(new Mouse());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                choose(row, wanted);
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
    }

    private void keys() {
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_RIGHT), "right", () -> choose(row, column + 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_LEFT), "left", () -> choose(row, column - 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_DOWN), "down", () -> choose(row + 1, wanted));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_UP), "up", () -> choose(row - 1, wanted));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_HOME), "first", () -> choose(row, 0));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_END), "last", () -> choose(row, Integer.MAX_VALUE));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_ENTER), "open", () -> asked.mark(null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_F2), "open", () -> asked.mark(null));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_DELETE), "away", asked::takeAway);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_BACK_SPACE), "away", asked::takeAway);
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent e) {
                typed(e);
            }
        });
    }

    private void typed(KeyEvent e) {
        if (e.isControlDown() || e.isAltDown() || e.isMetaDown() || inHand().isEmpty()) {
            return;
        }
        int how = e.getKeyChar() - '0';
        if (how >= 0 && how < HowMarked.values().length) {
            asked.how(HowMarked.values()[how]);
            e.consume();
        } else if (Character.isLetter(e.getKeyChar())) {
            asked.mark(e.getKeyChar());
            e.consume();
        }
    }

    /** The same strip keeps the position in hand, another begins at the first. */
    void show(StripLines next, boolean another) {
        if (another || row >= next.rows().size()) {
            row = 0;
            wanted = 1;
        } else {
            var line = row < lines.rows().size() ? lines.rows().get(row).line() : null;
            for (int i = 0; i < next.rows().size(); i++) {
                row = next.rows().get(i).line() == line ? i : row;
            }
        }
        lines = next;
        getAccessibleContext().setAccessibleDescription(next.said());
        choose(row, wanted);
        revalidate();
    }

    /** The position in hand; empty where the strip has none. */
    Optional<StripLines.Cell> inHand() {
        return inLine().map(each -> each.cells().get(column));
    }

    /** The line in hand. */
    Optional<StripLines.Row> inLine() {
        return row < lines.rows().size() ? Optional.of(lines.rows().get(row)) : Optional.empty();
    }

    void choose(int toRow, int toColumn) {
        row = Math.max(0, Math.min(toRow, lines.rows().size() - 1));
        int last = inLine().map(each -> each.cells().size() - 1).orElse(0);
        column = Math.max(0, Math.min(toColumn, last));
        wanted = toColumn == wanted ? wanted : column;
        asked.inHand();
        inHand().ifPresent(cell -> {
            getAccessibleContext().setAccessibleDescription(String.join(". ", cell.said()));
            if (isFocusOwner()) {
                reveal();
                EventThread.later(this::reveal); // what stands beside it may have changed how high it is
            }
        });
        repaint();
    }

    private void reveal() {
        if (inHand().isPresent()) {
            Rectangle wanted = grid().cell(row, column).getBounds();
            int head = (int) Math.ceil(grid().headHeight());
            scrollRectToVisible(new Rectangle(wanted.x, wanted.y - head, wanted.width, wanted.height + head));
        }
    }

    private StripGrid grid() {
        Font text = UIManager.getFont("Label.font");
        return new StripGrid(
                lines,
                getFontMetrics(strong(text)),
                getFontMetrics(small(text)),
                getWidth() == 0 ? UIScale.scale(WIDTH) : getWidth());
    }

    private static Font strong(Font text) {
        return text.deriveFont(Font.BOLD);
    }

    private static Font small(Font text) {
        return text.deriveFont(text.getSize2D() * 12 / 13);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(WIDTH), (int) Math.ceil(grid().height()));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    /** Laid out before its width was known, it asks for its height once it is. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other && width > 0 && getPreferredSize().height != height) {
            EventThread.later(this::revalidate);
        }
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        StripGrid grid = grid();
        int at = rowAt(e);
        if (at < 0) {
            return null;
        }
        StripLines.Row of = lines.rows().get(at);
        int over = grid.columnAt(e.getX());
        return over < 0 || over >= of.cells().size()
                ? of.title().note().isEmpty()
                        ? of.title().name()
                        : String.join(". ", of.title().name(), of.title().note())
                : String.join(". ", of.cells().get(over).said());
    }

    /** The head stays in view while the rows go by under it. */
    private int headTop() {
        return Math.max(0, getVisibleRect().y);
    }

    private int rowAt(MouseEvent e) {
        boolean head = e.getY() < headTop() + grid().headHeight();
        return head ? -1 : grid().rowAt(e.getY());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        if (UIManager.get("awt.font.desktophints") instanceof Map<?, ?> hints) {
            g.addRenderingHints(hints);
        }
        Font text = UIManager.getFont("Label.font");
        new StripPainter(lines, grid(), strong(text), small(text), g)
                .paint(getWidth(), headTop(), row, column, isFocusOwner());
        g.dispose();
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            StripGrid grid = grid();
            int at = rowAt(e);
            int over = grid.columnAt(e.getX());
            if (at >= 0) {
                choose(at, over < 0 ? column : over);
            }
        }

        @Override
        public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2 && rowAt(e) >= 0) {
                asked.mark(null);
            }
        }
    }
}
