package witnessmark.desktop.cases;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.EventThread;
import witnessmark.domain.Speaks;
import witnessmark.wording.Texts;

/**
 * Findings against causes. Arrows go from cell to cell; a cell is weighed by {@code +}, {@code -}, {@code 0} and Delete, and
 * Enter asks for the why. Under the findings stand how sure each cause is and its tests, which Enter leads to.
 */
final class EvidenceTable extends JPanel {
    /** What keys and menus ask for. */
    interface Asked {
        void towards(int row, int column, Speaks way);

        void takeAway(int row, int column);

        void open(int row, int column);

        void menu(int row, int column, Rectangle at);
    }

    private static final int WIDTH = 514;

    private final Texts texts;
    private final transient Asked asked;
    private final transient Consumer<String> readout;
    private transient EvidenceLines lines = EvidenceLines.NONE;
    private int row;
    private int column;

    /** @param readout told what is in hand */
    EvidenceTable(Texts texts, Asked asked, Consumer<String> readout) {
        this.texts = texts;
        this.asked = asked;
        this.readout = readout;
        setOpaque(false);
        setFocusable(true);
        Lettering.plain(this);
        getAccessibleContext().setAccessibleName(texts.get("cases.evidence"));
        setToolTipText("");
        Styles.as(Styles.FIELD_LABEL, this);
        keys();
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                choose(row, column);
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    private void keys() {
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_RIGHT), "right", () -> choose(row, column + 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_LEFT), "left", () -> choose(row, column - 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_DOWN), "down", () -> choose(row + 1, column));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_UP), "up", () -> choose(row - 1, column));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_HOME), "first", () -> choose(row, 0));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_END), "last", () -> choose(row, Integer.MAX_VALUE));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_DELETE), "away", this::takeAway);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_BACK_SPACE), "away", this::takeAway);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_ENTER), "open", this::open);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_F2), "open", this::open);
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_CONTEXT_MENU), "menu", this::menu);
        FormKeys.bind(this, Keys.shift(KeyEvent.VK_F10), "menu", this::menu);
        FormKeys.bind(this, KeyStroke.getKeyStroke('+'), "for", () -> towards(Speaks.FOR));
        FormKeys.bind(this, KeyStroke.getKeyStroke('-'), "against", () -> towards(Speaks.AGAINST));
        FormKeys.bind(this, KeyStroke.getKeyStroke('0'), "neither", () -> towards(Speaks.NEITHER));
    }

    /** The same incident keeps the cell in hand; another begins at the first, and so does one that had no finding yet. */
    void show(EvidenceLines next, boolean another) {
        if (another || lines.rows().isEmpty()) {
            row = 0;
            column = 0;
        } else if (row < lines.rows().size() && !next.rows().isEmpty()) {
            var finding = lines.rows().get(row).finding();
            row = Math.max(
                    0,
                    next.rows().stream()
                            .map(EvidenceLines.Row::finding)
                            .toList()
                            .indexOf(finding));
        } else {
            row += next.rows().size() - lines.rows().size(); // a row of the foot stays that row
        }
        lines = next;
        column = Math.max(0, Math.min(column, next.heads().size() - 1));
        row = Math.max(0, Math.min(row, next.rows().size() + 1));
        getAccessibleContext().setAccessibleDescription(next.said());
        revalidate();
        repaint();
    }

    int row() {
        return row;
    }

    int column() {
        return column;
    }

    /** Whether a cell of a finding is in hand. */
    boolean onFinding() {
        return row < lines.rows().size() && !lines.heads().isEmpty();
    }

    /** What is in hand. */
    String inHand() {
        if (lines.heads().isEmpty()) {
            return row < lines.rows().size() ? lines.rows().get(row).whole() : "";
        }
        EvidenceLines.Head head = lines.heads().get(column);
        if (row < lines.rows().size()) {
            EvidenceLines.Row finding = lines.rows().get(row);
            return finding.cells().get(column).said() + " " + finding.whole();
        }
        return row == lines.rows().size() ? head.called() : head.tested();
    }

    void choose(int toRow, int toColumn) {
        row = Math.max(0, Math.min(toRow, lines.rows().size() + 1));
        column = Math.max(0, Math.min(toColumn, lines.heads().size() - 1));
        String said = inHand();
        readout.accept(said);
        getAccessibleContext().setAccessibleDescription(said.isEmpty() ? lines.said() : said);
        if (isFocusOwner() && !lines.heads().isEmpty()) {
            Rectangle2D cell = grid().cell(row, column);
            scrollRectToVisible(cell.getBounds());
        }
        repaint();
    }

    private void towards(Speaks way) {
        if (onFinding()) {
            asked.towards(row, column, way);
        }
    }

    private void takeAway() {
        if (onFinding()) {
            asked.takeAway(row, column);
        }
    }

    private void open() {
        if (!lines.heads().isEmpty()) {
            asked.open(row, column);
        }
    }

    private void menu() {
        if (!lines.heads().isEmpty()) {
            asked.menu(row, column, grid().cell(row, column).getBounds());
        }
    }

    private EvidenceGrid grid() {
        return grid(getWidth() == 0 ? UIScale.scale(WIDTH) : getWidth());
    }

    private EvidenceGrid grid(int width) {
        EvidencePainter.Fonts fonts = fonts();
        return new EvidenceGrid(lines, getFontMetrics(fonts.strong()), getFontMetrics(fonts.small()), width);
    }

    private EvidencePainter.Fonts fonts() {
        Font text = UIManager.getFont("Label.font");
        return new EvidencePainter.Fonts(text, text.deriveFont(Font.BOLD), text.deriveFont(text.getSize2D() * 12 / 13));
    }

    @Override
    public Dimension getPreferredSize() {
        EvidenceGrid grid = grid();
        return new Dimension(UIScale.scale(WIDTH), (int) Math.ceil(grid.height()));
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
        EvidenceGrid grid = grid();
        int atRow = grid.rowAt(e.getY());
        int atColumn = grid.columnAt(e.getX());
        if (atRow < 0) {
            return atColumn < 0 || lines.heads().isEmpty()
                    ? null
                    : lines.heads().get(atColumn).called();
        }
        if (atRow < lines.rows().size()) {
            EvidenceLines.Row at = lines.rows().get(atRow);
            return atColumn < 0 || lines.heads().isEmpty()
                    ? at.whole()
                    : at.cells().get(atColumn).said();
        }
        return texts.get(atRow == lines.rows().size() ? "cases.evidence.sure.tip" : "cases.evidence.tests.tip");
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        if (UIManager.get("awt.font.desktophints") instanceof Map<?, ?> hints) {
            g.addRenderingHints(hints);
        }
        new EvidencePainter(texts, lines, grid(), fonts(), g).paint(getWidth(), row, column, isFocusOwner());
        g.dispose();
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            EvidenceGrid grid = grid();
            int atRow = grid.rowAt(e.getY());
            int atColumn = grid.columnAt(e.getX());
            if (atRow >= 0) {
                choose(atRow, atColumn < 0 ? column : atColumn);
            }
            asksMenu(e);
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            asksMenu(e);
        }

        @Override
        public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2 && grid().rowAt(e.getY()) >= 0) {
                menu();
            }
        }

        private void asksMenu(MouseEvent e) {
            if (e.isPopupTrigger()) {
                menu();
            }
        }
    }
}
