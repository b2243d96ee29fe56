package witnessmark.desktop.trials;

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
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.ToolTipManager;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.ChartStyle;
import witnessmark.chart.DrawnLivesChart;
import witnessmark.chart.LivesChart;
import witnessmark.desktop.form.ChartLook;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Palette;

/** Lives side by side. Up and Down go from strip to strip, Enter opens the part of the one in hand. */
final class LivesView extends JPanel {
    private static final int PAPER = 960;
    private static final int MARGIN = 16;
    private static final int ROW = 24;

    private final transient Consumer<String> open;
    private final transient Consumer<String> readout;
    private transient @Nullable LivesChart chart;
    private String whole = "";
    private int chosen = -1;

    LivesView(String name, Consumer<String> open, Consumer<String> readout) {
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

    /** @param words the whole of it in a sentence */
    void show(LivesChart next, String words) {
        chart = next;
        whole = words;
        chosen = Math.min(chosen, strips().size() - 1);
        getAccessibleContext().setAccessibleDescription(whole);
        revalidate();
        repaint();
    }

    void choose(int strip) {
        List<LivesChart.Strip> all = strips();
        chosen = Math.min(strip, all.size() - 1);
        String said = chosen < 0 ? "" : all.get(chosen).words();
        readout.accept(said);
        getAccessibleContext().setAccessibleDescription(said.isEmpty() ? whole : said);
        if (chosen >= 0) {
            int row = UIScale.scale(ROW);
            scrollRectToVisible(new Rectangle(0, top(), 1, row));
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
            open.accept(strips().get(chosen).record());
        }
    }

    private List<LivesChart.Strip> strips() {
        LivesChart now = chart;
        return now == null ? List.of() : now.strips();
    }

    private int at(int y) {
        LivesChart now = chart;
        return now == null ? -1 : drawn(now, ChartLook.now(), getWidth()).at(y);
    }

    /** What it looks like on paper, in light colours; null where nothing is shown. */
    @Nullable
    BufferedImage picture() {
        LivesChart now = chart;
        if (now == null) {
            return null;
        }
        int high = DrawnLivesChart.height(now);
        BufferedImage image =
                new BufferedImage(2 * (PAPER + 2 * MARGIN), 2 * (high + 2 * MARGIN), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(2, 2);
        ChartStyle style = ChartLook.onPaper();
        g.setColor(style.sheet());
        g.fillRect(0, 0, PAPER + 2 * MARGIN, high + 2 * MARGIN);
        g.translate(MARGIN, MARGIN);
        new DrawnLivesChart(now, style, style.series().get(0), style.series().get(1), PAPER).draw(g, -1);
        g.dispose();
        return image;
    }

    @Override
    public Dimension getPreferredSize() {
        LivesChart now = chart;
        return UIScale.scale(new Dimension(600, now == null ? 100 : DrawnLivesChart.height(now)));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        int at = at(e.getY());
        return at < 0 ? null : strips().get(at).words();
    }

    private static DrawnLivesChart drawn(LivesChart chart, ChartStyle style, int width) {
        return new DrawnLivesChart(chart, style, Palette.WITHIN.colour(), Palette.OVER.colour(), width);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        LivesChart now = chart;
        if (now == null) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        drawn(now, ChartLook.now(), getWidth()).draw(g, chosen);
        if (isFocusOwner()) {
            g.setColor(Palette.MARK.colour());
            int ring = UIScale.scale(2);
            for (int i = 0; i < ring; i++) {
                g.drawRect(i, i, getWidth() - 1 - 2 * i, getHeight() - 1 - 2 * i);
            }
        }
        g.dispose();
    }
}
