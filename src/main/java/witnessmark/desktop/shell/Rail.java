package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/**
 * The list of places at the left. Arrow keys go from place to place, letters jump, Enter moves on into the page. The
 * chosen place is a stroke laid across the seam between rail and page.
 */
final class Rail extends JPanel {
    /** Width of the rail proper; the seam and the end of the stroke stand beyond it. */
    static final int WIDE = 191;

    private static final String COPIES = "gapleft 18, gapright 26, wmin 0, hidemode 2, wrap";
    private static final int BEFORE_LIST = 3;

    static final int SEAM = 2;
    static final int STROKE_END = 10;

    private final Texts texts;
    private final List<PlaceId> ids;
    private final DefaultListModel<RailRow> rows = new DefaultListModel<>();
    private final JList<RailRow> list = new JList<>(rows);
    private final JLabel logbook = Lettering.cutLine("", Styles.RAIL_GROUP);
    private final JLabel writing = Lettering.cutLine("", Styles.RAIL_GROUP);
    private final JComponent copies;
    private final Consumer<PlaceId> onGo;
    private boolean showing;

    /**
     * @param copies where else the logbook is kept
     * @param onGo told the place chosen
     * @param onEnter told that the page is to take the focus
     */
    Rail(Texts texts, List<PlaceId> places, JComponent copies, Consumer<PlaceId> onGo, Runnable onEnter) {
        super(new FormLayout("insets 12 0 14 0, gap 0, fill", "[0::,grow,fill]", "[]0[]0[]0[]8[grow,fill][]"));
        this.texts = texts;
        this.ids = places;
        this.copies = copies;
        this.onGo = onGo;
        setOpaque(false);
        JLabel name = Lettering.line(texts.get("shell.program"), Styles.APP_NAME);
        name.setIcon(new SeamIcon(SeamState.WITHIN, 22));
        name.setIconTextGap(8);
        add(name, "gapleft 18, wrap");
        add(logbook, "gapleft 18, gapright 14, wmin 0, wrap");
        add(writing, "gapleft 18, gapright 14, wmin 0, hidemode 2, wrap");
        writing.setVisible(false);
        add(copies, COPIES);
        add(list, "wrap, growy, aligny top");
        setUpList(onEnter);
    }

    /** Puts the line of copies back under who writes. */
    void takeCopies() {
        add(copies, COPIES, BEFORE_LIST);
    }

    /** Puts the status strip at the foot. */
    void foot(JComponent strip) {
        add(strip, "gapleft 18, gapright 26, wmin 0");
    }

    /** The name of the logbook under the program's own. */
    void logbook(String name) {
        logbook.setText(name);
    }

    /** Whose name goes with what is written. */
    void writing(String name) {
        writing.setText(texts.get("shell.rail.writing", name));
        writing.setToolTipText(texts.get("shell.rail.writing.tip", name));
        writing.setVisible(true);
    }

    JList<RailRow> places() {
        return list;
    }

    void show(Desk desk, @Nullable PlaceId chosen) {
        showing = true;
        rows.clear();
        PlaceGroup group = null;
        for (PlaceId place : ids) {
            if (place.group() != group) {
                group = place.group();
                rows.addElement(new RailRow(texts.get(group.key()), null, Desk.Note.NONE, ""));
            }
            Desk.Note note = desk.note(place);
            rows.addElement(new RailRow(texts.get(place.key()), place, note, noteWords(note)));
            if (place == chosen) {
                list.setSelectedIndex(rows.size() - 1);
            }
        }
        showing = false;
        list.revalidate();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(WIDE + SEAM + STROKE_END), super.getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Palette.RAIL.colour());
        g.fillRect(0, 0, UIScale.scale(WIDE), getHeight());
    }

    @Override
    protected void paintChildren(Graphics g) {
        super.paintChildren(g);
        g.setColor(Palette.RAIL_SEAM.colour());
        g.fillRect(UIScale.scale(WIDE), 0, UIScale.scale(SEAM), getHeight());
    }

    private String noteWords(Desk.Note note) {
        String waiting = note.waiting() > 0 ? texts.get("shell.rail.waiting", note.waiting()) : "";
        String draft = note.draft() ? texts.get("shell.rail.draft") : "";
        return waiting.isEmpty() || draft.isEmpty() ? waiting + draft : waiting + ", " + draft;
    }

    private void setUpList(Runnable onEnter) {
        list.setOpaque(false);
        list.getAccessibleContext().setAccessibleName(texts.get("shell.rail"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setSelectionModel(new PlacesOnly(rows));
        list.setCellRenderer(new RailCell(texts));
        list.addListSelectionListener(e -> {
            RailRow row = list.getSelectedValue();
            if (!e.getValueIsAdjusting() && !showing && row != null && row.place() != null) {
                onGo.accept(row.place());
            }
        });
        FormKeys.bind(list, Keys.plain(KeyEvent.VK_ENTER), "enter", onEnter);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent e) {
                onEnter.run();
            }
        });
    }
}
