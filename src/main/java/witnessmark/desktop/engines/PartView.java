package witnessmark.desktop.engines;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.photos.PhotoStrip;
import witnessmark.desktop.task.EventThread;
import witnessmark.domain.Id;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.quantity.Moment;
import witnessmark.wording.Texts;

/** One part: where it is, and under tabs where it has been and its lives; a figure's entries at the side. */
final class PartView {
    private final Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "[]2[]2[]4[fill,grow]");
    private final JLabel mark = Lettering.line("", Styles.SECTION);
    private final JLabel where = Lettering.cutLine("", Styles.FIELD_LABEL);
    private final JLabel what = Lettering.cutLine("", Styles.NOTE);
    private final JLabel seam = new JLabel();
    private final JLabel stands = Lettering.cutLine("", Styles.STRONG);
    private final JTabbedPane tabs = new JTabbedPane();
    private final FigureTable<TimeLine> times;
    private final LivesTab lives;
    private final Beside beside;
    private final Texts texts;
    private final JButton face;
    private final JPanel ways = new JPanel(new FormLayout("insets 0, gap 12 0, hidemode 3", "", "[baseline]"));
    private List<TrialWay> trials = List.of();
    private Consumer<String> trial = id -> {};
    private @Nullable PhotoStrip photos;
    private String part = "";

    /**
     * What the page can be asked to do.
     *
     * @param behind shows the entries behind a figure
     * @param engine opens an engine, by the text form of its identity
     * @param correct opens the part, or one of the times it was fitted, on its sheet, by the text form of its identity
     * @param face shows the part's face, by the text form of its identity
     * @param closeBehind puts the entries behind a figure away
     * @param back goes back to the engine in hand
     */
    record Asked(
            Consumer<Shown> behind,
            Consumer<String> engine,
            Consumer<String> correct,
            Consumer<String> face,
            Runnable closeBehind,
            Runnable back) {}

    /**
     * What leads to a trial its design is in.
     *
     * @param id the text form of its identity
     * @param words its name and what came of it so far
     */
    record TrialWay(String id, String words) {}

    PartView(SheetTools tools, EntryWork work, Asked asked) {
        this.texts = tools.texts();
        times = times(asked).with(tools, "engines.times");
        lives = new LivesTab(tools, "engines.partLives", asked.behind());
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_TYPE, "underlined");
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_HEIGHT, 28);
        tabs.putClientProperty(FlatClientProperties.STYLE, "background: $Wm.sheet");
        tabs.addTab(texts.get("engines.tab.times"), timesTab());
        tabs.addTab(texts.get("engines.tab.lives"), lives);
        tabs.getAccessibleContext().setAccessibleName(texts.get("engines.part.tabs"));
        beside = new Beside(tabs, new BehindPane(tools, work, asked.closeBehind()));
        JButton back = Buttons.link(Caption.of(texts.get("engines.part.back")), asked.back());
        JButton correct = Buttons.link(
                Caption.of(texts.get("engines.part.correct")),
                () -> asked.correct().accept(part));
        face = Buttons.link(
                Caption.of(texts.get("engines.part.face")), () -> asked.face().accept(part));
        JPanel head = new JPanel(new FormLayout(
                "insets 0, gap 0, fillx", "[]10[0::,grow,shrinkprio 200,fill]8[]6[0::]12[]12[]", "[baseline]"));
        head.setOpaque(false);
        head.add(mark);
        head.add(where, "wmin 0");
        head.add(seam);
        head.add(stands, "wmin 0");
        head.add(correct);
        head.add(back);
        FormKeys.bindWithin(sheet, Keys.plain(KeyEvent.VK_ESCAPE), "wm-back", asked.back());
        sheet.add(head, "growx, wmin 0, wrap");
        sheet.add(what, "growx, wmin 0, wrap");
        ways.setOpaque(false);
        ways.add(face);
        sheet.add(ways, "growx, wmin 0, hidemode 3, wrap");
        sheet.add(beside, "grow, wmin 0");
    }

    Sheet component() {
        return sheet;
    }

    /** Adds the tab of the part's photos. */
    void with(PhotoStrip strip) {
        tabs.addTab(texts.get("photos.section"), strip);
        photos = strip;
    }

    /** Says what opens a trial, by the text form of its identity. */
    void onTrial(Consumer<String> opens) {
        trial = opens;
    }

    /**
     * @param hasFace whether it has a face to be seen on the bench
     * @param of the trials its design is in
     */
    void show(PartLines lines, boolean hasFace, List<TrialWay> of) {
        face.setVisible(hasFace);
        ways.setVisible(hasFace || !of.isEmpty());
        if (!of.equals(trials)) {
            trials = of;
            FocusStays.on(ways, this::fillWays, this::first);
        }
        part = lines.part();
        mark.setText(lines.mark());
        where.setText(lines.where());
        what.setText(lines.what());
        seam.setIcon(new SeamIcon(lines.state(), 20));
        seam.getAccessibleContext().setAccessibleName(lines.stands());
        stands.setText(lines.stands());
        Styles.as(lines.state().style(), stands);
        times.sheet().show(lines.times());
        lives.show(lines.lives());
        if (photos != null) {
            photos.show(PhotosOf.part(Id.parse(part)));
        }
        sheet.getAccessibleContext().setAccessibleName(texts.get("engines.comma", lines.mark(), lines.where()));
        sheet.revalidate();
        sheet.repaint();
    }

    /** Comes into view; where it has been takes the focus, the lives of what was never fitted. */
    void takeFocus() {
        if (times.table().getRowCount() == 0) {
            tabs.setSelectedComponent(lives);
        } else {
            tabs.setSelectedIndex(0);
        }
        first().requestFocusInWindow();
        EventThread.later(() -> sheet.scrollRectToVisible(new Rectangle(0, 0, sheet.getWidth(), sheet.getHeight())));
    }

    private void fillWays() {
        ways.removeAll();
        ways.add(face);
        trials.forEach(each -> {
            JButton way = Buttons.link(new Caption(each.words(), -1), () -> trial.accept(each.id()));
            way.setToolTipText(each.words());
            ways.add(way, "wmin 0");
        });
    }

    JLabel stands() {
        return stands;
    }

    javax.swing.JTable first() {
        return tabs.getSelectedComponent() == lives ? lives.table().table() : times.table();
    }

    Beside beside() {
        return beside;
    }

    JTabbedPane tabs() {
        return tabs;
    }

    FigureTable<TimeLine> times() {
        return times;
    }

    LivesTab lives() {
        return lives;
    }

    String where() {
        return where.getText();
    }

    private JPanel timesTab() {
        JPanel tab = new JPanel(new FormLayout("insets 6 0 0 0, fill", "[0::,grow,fill]", "[fill,grow]"));
        tab.setOpaque(false);
        times.sheet().whenEmpty(Lettering.paragraph(texts.get("engines.part.neverAnywhere"), Styles.QUIET_INK));
        tab.add(times.sheet(), "grow, hmin 150, wmin 0");
        return tab;
    }

    private FigureTable<TimeLine> times(Asked asked) {
        List<FigureColumn<TimeLine>> columns = List.of(
                FigureColumn.leading(
                        Column.<TimeLine>text(texts.get("engines.column.in"), TimeLine::place)
                                .strong()
                                .wide(70),
                        row -> way(row, asked)),
                FigureColumn.words(Column.<TimeLine>text(texts.get("engines.column.position"), TimeLine::position)
                        .wide(120)),
                FigureColumn.leading(
                        Column.<TimeLine, Moment>text(
                                        texts.get("engines.column.fitted"), TimeLine::since, TimeLine::from)
                                .wide(120),
                        row -> () -> asked.correct().accept(row.id())),
                FigureColumn.words(
                        Column.<TimeLine, Moment>text(texts.get("engines.column.off"), TimeLine::until, TimeLine::to)
                                .wide(120)),
                FigureColumn.words(Column.<TimeLine, Long>figure(
                                texts.get("engines.column.ranThere"), TimeLine::ran, TimeLine::amount)
                        .wide(96)),
                FigureColumn.words(Column.<TimeLine>text(texts.get("engines.column.why"), TimeLine::why)
                        .wide(170)
                        .grow()));
        return new FigureTable<>(
                texts.get("engines.tab.times"), columns, TimeLine::id, texts.get("engines.times.tip"), asked.behind());
    }

    private static @Nullable Runnable way(TimeLine row, Asked asked) {
        String engine = row.engine();
        return engine == null ? null : () -> asked.engine().accept(engine);
    }
}
