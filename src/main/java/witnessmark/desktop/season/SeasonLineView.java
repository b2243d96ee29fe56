package witnessmark.desktop.season;

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
import witnessmark.chart.DrawnSeasonLine;
import witnessmark.chart.SeasonLine;
import witnessmark.desktop.form.ChartLook;
import witnessmark.desktop.form.FocusRing;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Palette;
import witnessmark.wording.Texts;

/** The season along a line for each car. Left and Right go from incident to incident, Enter opens the one in hand. */
final class SeasonLineView extends JPanel {
    private final transient Consumer<String> open;
    private final transient Consumer<String> readout;
    private transient @Nullable SeasonLine line;
    private String whole = "";
    private int chosen = -1;

    /**
     * @param open told the incident that is opened, by the text form of its identity
     * @param readout told the words of the incident in hand; empty for none
     */
    SeasonLineView(Texts texts, Consumer<String> open, Consumer<String> readout) {
        this.open = open;
        this.readout = readout;
        setOpaque(false);
        setFocusable(true);
        getAccessibleContext().setAccessibleName(texts.get("season.line"));
        FormKeys.bind(
                this, Keys.plain(KeyEvent.VK_RIGHT), "next", () -> choose(Math.min(chosen + 1, marks().size() - 1)));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_LEFT), "before", () -> choose(Math.max(0, chosen - 1)));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_HOME), "first", () -> choose(0));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_END), "last", () -> choose(marks().size() - 1));
        FormKeys.bind(this, Keys.plain(KeyEvent.VK_ENTER), "open", this::openChosen);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                requestFocusInWindow();
                int at = drawn().at(e.getX(), e.getY());
                if (at >= 0) {
                    choose(at);
                }
            }

            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2 && drawn().at(e.getX(), e.getY()) >= 0) {
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
    void show(SeasonLine next, String words) {
        line = next;
        whole = words;
        chosen = Math.min(chosen, marks().size() - 1);
        say();
        revalidate();
        repaint();
    }

    /** The incidents in the order they are gone through. */
    List<SeasonLine.Mark> marks() {
        SeasonLine now = line;
        return now == null
                ? List.of()
                : now.rows().stream().flatMap(row -> row.marks().stream()).toList();
    }

    @Override
    public Dimension getPreferredSize() {
        SeasonLine now = line;
        return UIScale.scale(new Dimension(
                600, DrawnSeasonLine.height(now == null ? 1 : now.rows().size())));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        int at = drawn().at(e.getX(), e.getY());
        return at < 0 ? null : marks().get(at).words();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        drawn().draw(g, chosen);
        FocusRing.paint(this, g);
        g.dispose();
    }

    private DrawnSeasonLine drawn() {
        SeasonLine now = line;
        return new DrawnSeasonLine(
                now == null ? new SeasonLine(0, 0, List.of(), List.of()) : now,
                ChartLook.now(),
                Palette.WITHIN.colour(),
                getWidth());
    }

    private void choose(int at) {
        if (at >= 0 && at < marks().size()) {
            chosen = at;
            say();
            repaint();
        }
    }

    private void say() {
        String words = chosen < 0 ? "" : marks().get(chosen).words();
        readout.accept(words);
        getAccessibleContext().setAccessibleDescription(words.isEmpty() ? whole : words);
    }

    private void openChosen() {
        if (chosen >= 0) {
            open.accept(marks().get(chosen).record());
        }
    }
}
