package witnessmark.desktop.traceview;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.ChartTable;
import witnessmark.chart.StackedBar;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.form.TwoPanes;
import witnessmark.wording.Texts;

/** The page: which trace and what is laid over it, its rows, and beside them what was found in it under tabs. */
final class TracePanel extends JPanel {
    private static final String ROWS = "rows";
    private static final String TABLE = "table";
    private static final String NOTHING = "nothing";

    private final transient SheetTools tools;
    private final transient Texts texts;
    private final NoticeStrip notice = new NoticeStrip();
    private final ChoiceBox<TraceChoice> trace;
    private final ChoiceBox<TraceChoice> over;
    private final ShiftField shift;
    private final JButton channels;
    private final JButton asTable;
    private final JButton copy;
    private final JButton print;
    private final JButton turn;
    private final RowsView rows;
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final CardLayout cards = new CardLayout();
    private final JPanel shown = new JPanel(cards);
    private final JPanel tableRoom = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[fill,grow]"));
    private final JTextArea nothing = Lettering.paragraph("", Styles.QUIET_INK);
    private final transient SideTables side;
    private final JTabbedPane tabs = new JTabbedPane();
    private final TwoPanes panes;

    /** What the page does. */
    interface Doing extends RowsView.Told {
        void trace();

        void over();

        void shift(double seconds);

        void channels(JComponent from);

        void table();

        void copy();

        void print();

        void leave();

        /** Opens the sheet that says how speed wears a kind of part. */
        void wears();
    }

    TracePanel(SheetTools tools, Doing doing) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]0[]8[0::,grow,fill]"));
        this.tools = tools;
        this.texts = tools.texts();
        setOpaque(false);
        trace = new ChoiceBox<>(texts, Caption.of(texts.get("traceview.trace")), TraceChoice::words);
        over = new ChoiceBox<>(texts, Caption.of(texts.get("traceview.over")), TraceChoice::words);
        trace.onChange(doing::trace);
        over.onChange(doing::over);
        shift = new ShiftField(texts, doing::shift);
        channels = Buttons.plain(Caption.of(texts.get("traceview.channels")), () -> doing.channels(channelButton()));
        asTable = Buttons.link(Caption.of(texts.get("form.chart.asTable")), doing::table);
        copy = Buttons.link(Caption.of(texts.get("form.chart.copy")), doing::copy);
        print = Buttons.link(Caption.of(texts.get("tracesheet.button")), doing::print);
        print.setToolTipText(texts.get("tracesheet.button.tip", Keys.words(Keys.menu(KeyEvent.VK_P))));
        turn = Buttons.plain(Caption.of(texts.get("traceview.turn.side")), this::turn);
        rows = new RowsView(doing);
        side = new SideTables(tools, doing::wears);
        panes = new TwoPanes(main(), aside());
        add(notice, "cell 0 0, growx");
        add(head(doing), "cell 0 1, growx, wmin 0");
        add(panes, "cell 0 2, grow, w 0:0:, h 0:0:");
    }

    private JButton channelButton() {
        return channels;
    }

    private JPanel head(Doing doing) {
        JPanel head = new JPanel(new FormLayout(
                "insets 0, gap 8 4, fillx, hidemode 3",
                "[][80:230:,fill]12[][80:230:,fill]8[]8:push[]8[]8[]",
                "[center]"));
        head.setOpaque(false);
        head.add(trace.label());
        head.add(trace.combo(), "wmin 0");
        head.add(over.label());
        head.add(over.combo(), "wmin 0");
        head.add(shift, "w 130!");
        head.add(turn);
        head.add(channels);
        head.add(Buttons.plain(Caption.of(texts.get("traceview.leave")), doing::leave));
        turn.setVisible(false);
        return head;
    }

    private JComponent main() {
        Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "[fill,grow]0[]");
        shown.setOpaque(false);
        tableRoom.setOpaque(false);
        shown.add(rows, ROWS);
        shown.add(tableRoom, TABLE);
        shown.add(nothing, NOTHING);
        sheet.add(shown, "grow, w 0:0:, h 0:0:, wrap");
        JPanel foot = new JPanel(new FormLayout("insets 2 0 0 0, gap 8, fillx", "[0::,grow,fill][][][]"));
        foot.setOpaque(false);
        foot.add(readout, "growx, wmin 0");
        foot.add(asTable);
        foot.add(copy);
        foot.add(print);
        sheet.add(foot, "growx, wmin 0");
        return sheet;
    }

    private JComponent aside() {
        Sheet sheet = new Sheet("fill", "[0::,grow,fill]", "[fill,grow]");
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_TYPE, "underlined");
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_HEIGHT, 28);
        tabs.putClientProperty(FlatClientProperties.STYLE, "background: $Wm.sheet; tabInsets: 4,8,4,8");
        tabs.getAccessibleContext().setAccessibleName(texts.get("traceview.tabs"));
        tabs.addTab(texts.get("traceview.tab.marks"), side.marks());
        tabs.addTab(texts.get("traceview.tab.figures"), side.figures());
        tabs.addTab(texts.get("traceview.tab.speeds"), side.speeds());
        tabs.addTab(texts.get("traceview.tab.heat"), side.heat());
        tabs.addTab(texts.get("traceview.tab.wear"), side.wear());
        sheet.add(tabs, "grow, w 0:0:, h 0:0:");
        return sheet;
    }

    @Override
    public void doLayout() {
        super.doLayout();
        named();
    }

    private void named() {
        turn.setVisible(!panes.both());
        turn.setText(Caption.of(texts.get(panes.sideFirst() ? "traceview.turn.rows" : "traceview.turn.side"))
                .text());
    }

    private void turn() {
        panes.sideFirst(!panes.sideFirst());
        named();
    }

    /** Shows the rows where only one of the two has room. */
    void toRows() {
        if (!panes.both() && panes.sideFirst()) {
            turn();
        }
        rows.requestFocusInWindow();
    }

    // Showing

    void choices(List<TraceChoice> all, TraceChoice chosen, List<TraceChoice> others, @Nullable TraceChoice laid) {
        trace.load(all, chosen);
        over.load(others, laid == null ? others.get(0) : laid);
        boolean any = laid != null && laid.id() != null;
        shift.setVisible(any);
    }

    @Nullable
    TraceChoice chosen() {
        return trace.chosen();
    }

    @Nullable
    TraceChoice laidOver() {
        return over.chosen();
    }

    ShiftField shift() {
        return shift;
    }

    /** Says why there is nothing to be drawn, in place of the rows. */
    void nothing(String why) {
        rows.clear();
        nothing.setText(why);
        readout.setText(" ");
        canDraw(false);
        cards.show(shown, NOTHING);
    }

    void rows() {
        canDraw(true);
        asTable(false);
        cards.show(shown, ROWS);
    }

    void table(ChartTable table, String name) {
        List<Column<List<String>>> columns = java.util.stream.IntStream.range(
                        0, table.headings().size())
                .mapToObj(i -> Column.<List<String>>text(table.headings().get(i), row -> row.get(i))
                        .wide(i == 0 ? 70 : 120)
                        .grow())
                .toList();
        SheetTable<List<String>> sheet = new SheetTable<>(name, columns, row -> row).with(tools, "trace.table");
        sheet.show(table.rows());
        tableRoom.removeAll();
        tableRoom.add(sheet, "grow, w 0:0:");
        asTable(true);
        cards.show(shown, TABLE);
        revalidate();
    }

    private void asTable(boolean yes) {
        Caption caption = Caption.of(texts.get(yes ? "form.chart.asChart" : "form.chart.asTable"));
        asTable.setText(caption.text());
        asTable.setMnemonic(caption.mnemonic());
    }

    private void canDraw(boolean yes) {
        channels.setEnabled(yes);
        asTable.setEnabled(yes);
        copy.setEnabled(yes);
        print.setEnabled(yes);
    }

    /** @param heard what screen readers say of it: every row */
    void readout(String words, String heard) {
        readout.setText(words.isEmpty() ? " " : words);
        rows.getAccessibleContext().setAccessibleDescription(heard);
    }

    String readout() {
        return readout.getText().strip();
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    void fine() {
        notice.dismiss();
    }

    RowsView view() {
        return rows;
    }

    SideTables side() {
        return side;
    }

    JTabbedPane tabs() {
        return tabs;
    }

    void onTab(Runnable listener) {
        tabs.addChangeListener(e -> listener.run());
    }

    /** A bar of a share of the longest. */
    static StackedBar bar(double share, StackedBar.Fill fill) {
        return new StackedBar(List.of(new StackedBar.Piece(fill, Math.max(0, Math.min(1, share)))));
    }

    /** Words that scroll. */
    static JComponent scrolled(JTextArea words, Consumer<JPanel> more) {
        JPanel page = new JPanel(new FormLayout("insets 8 0 0 0, gap 0 8, fillx, wrap 1", "[0::,grow,fill]"));
        page.setOpaque(false);
        page.add(words, "growx, wmin 0");
        more.accept(page);
        return new ScrollPage(page);
    }
}
