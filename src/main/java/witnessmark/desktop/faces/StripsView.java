package witnessmark.desktop.faces;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
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
import witnessmark.chart.DrawnLifeRows;
import witnessmark.chart.LifeRows;
import witnessmark.desktop.form.ChartLook;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Palette;

/** Every head and block side by side since its skim. Up and Down go from strip to strip, Enter opens the one in hand. */
final class StripsView extends JPanel {
    private final transient Consumer<String> open;
    private final transient Consumer<String> readout;
    private transient @Nullable LifeRows rows;
    private String whole = "";
    private int chosen = -1;

    StripsView(String name, Consumer<String> open, Consumer<String> readout) {
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
                choose(drawn().at(e.getY()));
            }

            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
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

    /** @param words the whole of it in two sentences */
    void show(LifeRows next, String words) {
        rows = next;
        whole = words;
        chosen = Math.min(chosen, next.rows().size() - 1);
        getAccessibleContext().setAccessibleDescription(whole);
        revalidate();
        repaint();
    }

    void choose(int row) {
        List<LifeRows.Row> all = all();
        chosen = Math.min(row, all.size() - 1);
        String said = chosen < 0 ? "" : all.get(chosen).words();
        readout.accept(said);
        getAccessibleContext().setAccessibleDescription(said.isEmpty() ? whole : said);
        repaint();
    }

    private void openChosen() {
        if (chosen >= 0) {
            open.accept(all().get(chosen).record());
        }
    }

    private List<LifeRows.Row> all() {
        LifeRows now = rows;
        return now == null ? List.of() : now.rows();
    }

    @Override
    public Dimension getPreferredSize() {
        return UIScale.scale(new Dimension(600, DrawnLifeRows.height(all().size())));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        int at = drawn().at(e.getY());
        return at < 0 ? null : all().get(at).words();
    }

    private DrawnLifeRows drawn() {
        LifeRows now = rows;
        return new DrawnLifeRows(
                now == null ? new LifeRows(1, List.of(), List.of()) : now,
                ChartLook.now(),
                Palette.WITHIN.colour(),
                getWidth());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        drawn().draw(g, chosen);
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
