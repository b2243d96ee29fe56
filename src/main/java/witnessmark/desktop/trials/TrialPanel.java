package witnessmark.desktop.trials;

import java.awt.CardLayout;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.ChartTable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.form.TwoPanes;
import witnessmark.quantity.Moment;
import witnessmark.wording.Texts;

/** The page: which trial, its lives side by side, and beside them how it stands and what was found. */
final class TrialPanel extends JPanel {
    private static final String LIVES = "lives";
    private static final String TABLE = "table";
    private static final String NOTHING = "nothing";
    private static final int FROM = 4;
    private static final int TO = 5;

    private final transient SheetTools tools;
    private final transient Texts texts;
    private final transient Doing doing;
    private final NoticeStrip notice = new NoticeStrip();
    private final ChoiceBox<TrialLines> trial;
    private final JButton judge;
    private final JButton turn;
    private final JButton asTable;
    private final JButton copy;
    private final LivesView lives;
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final CardLayout cards = new CardLayout();
    private final JPanel shown = new JPanel(cards);
    private final JPanel tableRoom = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[fill,grow]"));
    private final JTextArea stands = Lettering.paragraph("", Styles.STRONG);
    private final JTextArea said = Lettering.paragraph("", Styles.QUIET_INK);
    private final JTextArea figures = Lettering.paragraph("", Styles.QUIET_INK);
    private final SheetTable<FoundLine> found;
    private final TwoPanes panes;

    /** What the page does. */
    interface Doing {
        void trial(TrialLines chosen);

        void setUp();

        void judge();

        void table();

        void copy();

        void leave();

        void part(String record);

        void found(FoundLine line);
    }

    TrialPanel(SheetTools tools, Doing doing) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]0[]8[0::,grow,fill]"));
        this.tools = tools;
        this.texts = tools.texts();
        this.doing = doing;
        setOpaque(false);
        trial = new ChoiceBox<>(texts, Caption.of(texts.get("trialview.trial")), TrialLines::name);
        trial.onChange(this::chosen);
        judge = Buttons.plain(Caption.of(texts.get("trialview.judge")), doing::judge);
        turn = Buttons.plain(Caption.of(texts.get("trialview.turn.side")), this::turn);
        asTable = Buttons.link(Caption.of(texts.get("form.chart.asTable")), doing::table);
        copy = Buttons.link(Caption.of(texts.get("form.chart.copy")), doing::copy);
        lives = new LivesView(texts.get("trialview.lives"), doing::part, this::readout);
        found = new SheetTable<FoundLine>(texts.get("trialview.found"), columns(), row -> row)
                .with(tools, "trial.found");
        found.table().setToolTipText(texts.get("trialview.found.tip"));
        found.whenEmpty(Lettering.paragraph(texts.get("trialview.found.none"), Styles.QUIET_INK));
        found.onOpen(doing::found);
        panes = new TwoPanes(main(), aside());
        add(notice, "cell 0 0, growx");
        add(head(), "cell 0 1, growx, wmin 0");
        add(panes, "cell 0 2, grow, w 0:0:, h 0:0:");
    }

    private void chosen() {
        TrialLines now = trial.chosen();
        if (now != null) {
            doing.trial(now);
        }
    }

    private JPanel head() {
        JPanel head = new JPanel(new FormLayout(
                "insets 0, gap 8 4, fillx, hidemode 3", "[][80:280:,fill]8:push[]8[]8[]8[]", "[center]"));
        head.setOpaque(false);
        head.add(trial.label());
        head.add(trial.combo(), "wmin 0");
        head.add(turn);
        head.add(judge);
        head.add(Buttons.plain(Caption.of(texts.get("trialview.setUp")), doing::setUp));
        head.add(Buttons.plain(Caption.of(texts.get("trialview.leave")), doing::leave));
        turn.setVisible(false);
        return head;
    }

    /** Lives, what was found on them below: one page, so that a low window scrolls rather than squeezes. */
    private JComponent main() {
        shown.setOpaque(false);
        tableRoom.setOpaque(false);
        shown.add(lives, LIVES);
        shown.add(tableRoom, TABLE);
        shown.add(Lettering.paragraph(texts.get("trialview.none"), Styles.QUIET_INK), NOTHING);
        JPanel foot = new JPanel(new FormLayout("insets 2 0 0 0, gap 8, fillx", "[0::,grow,fill][][]"));
        foot.setOpaque(false);
        foot.add(readout, "growx, wmin 0");
        foot.add(asTable);
        foot.add(copy);
        JPanel page = new JPanel(
                new FormLayout("insets 0, gap 0, fill, wrap 1", "[0::,grow,fill]", "[]4[]0[]12[]4[fill,grow]"));
        page.setOpaque(false);
        page.add(Lettering.line(texts.get("trialview.lives"), Styles.SECTION));
        page.add(shown, "growx, wmin 0");
        page.add(foot, "growx, wmin 0");
        page.add(Lettering.line(texts.get("trialview.found"), Styles.SECTION));
        page.add(found, "grow, w 0:0:, h 120:150:");
        return sheet(page);
    }

    private JComponent aside() {
        JPanel page = new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap 1", "[0::,grow,fill]", "[]6[]14[]4[]"));
        page.setOpaque(false);
        page.add(stands, "growx, wmin 0");
        page.add(said, "growx, wmin 0");
        page.add(Lettering.line(texts.get("trialview.figures"), Styles.SECTION));
        page.add(figures, "growx, wmin 0");
        return sheet(page);
    }

    private static Sheet sheet(JPanel page) {
        Sheet sheet = new Sheet("fill", "[0::,grow,fill]", "[fill,grow]");
        sheet.add(new ScrollPage(page), "grow, w 0:0:, h 0:0:");
        return sheet;
    }

    private List<Column<FoundLine>> columns() {
        return List.of(
                Column.<FoundLine, Moment>text(texts.get("trialview.column.day"), FoundLine::day, FoundLine::at)
                        .wide(124),
                Column.<FoundLine>text(texts.get("trialview.column.side"), FoundLine::side)
                        .wide(60),
                Column.<FoundLine>text(texts.get("trialview.column.part"), FoundLine::part)
                        .strong()
                        .wide(64),
                Column.<FoundLine>text(texts.get("trialview.column.what"), FoundLine::what)
                        .inked(FoundLine::state)
                        .wide(240)
                        .grow());
    }

    @Override
    public void doLayout() {
        super.doLayout();
        named();
    }

    private void named() {
        turn.setVisible(!panes.both());
        Caption caption = Caption.of(texts.get(panes.sideFirst() ? "trialview.turn.lives" : "trialview.turn.side"));
        turn.setText(caption.text());
        turn.setMnemonic(caption.mnemonic());
    }

    private void turn() {
        panes.sideFirst(!panes.sideFirst());
        named();
    }

    // Showing

    void show(List<TrialLines> all, TrialLines now, boolean table) {
        trial.load(all, now);
        judge.setEnabled(now.goesOn());
        stands.setText(now.stands());
        said.setText(String.join("\n\n", now.said()));
        figures.setText(String.join("\n\n", now.figures()));
        found.show(now.found());
        lives.show(now.chart(), now.whole());
        can(true);
        if (table) {
            tableRoom.removeAll();
            tableRoom.add(table(now), "grow, w 0:0:");
        }
        Caption caption = Caption.of(texts.get(table ? "form.chart.asChart" : "form.chart.asTable"));
        asTable.setText(caption.text());
        asTable.setMnemonic(caption.mnemonic());
        readout.setVisible(!table);
        cards.show(shown, table ? TABLE : LIVES);
        revalidate();
    }

    private SheetTable<List<String>> table(TrialLines now) {
        ChartTable table = now.chart().table();
        SheetTable<List<String>> sheet = new SheetTable<List<String>>(
                        texts.get("trialview.lives"),
                        IntStream.range(0, table.headings().size())
                                .mapToObj(i -> column(table.headings().get(i), i))
                                .toList(),
                        row -> row)
                .with(tools, "trial.lives");
        sheet.show(table.rows());
        return sheet;
    }

    private static Column<List<String>> column(String heading, int index) {
        return index == FROM || index == TO
                ? Column.<List<String>, String>figure(heading, row -> row.get(index), row -> row.get(index))
                        .wide(76)
                : Column.<List<String>>text(heading, row -> row.get(index))
                        .wide(index == 0 ? 60 : 110)
                        .grow();
    }

    /** Says that there is no trial. */
    void nothing() {
        trial.load(List.of(), null);
        List.of(stands, said, figures).forEach(each -> each.setText(""));
        found.show(List.of());
        judge.setEnabled(false);
        can(false);
        cards.show(shown, NOTHING);
    }

    private void can(boolean yes) {
        asTable.setEnabled(yes);
        copy.setEnabled(yes);
    }

    private void readout(String words) {
        readout.setText(words.isEmpty() ? " " : words);
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    void fine() {
        notice.dismiss();
    }

    LivesView lives() {
        return lives;
    }

    SheetTable<FoundLine> found() {
        return found;
    }

    ChoiceBox<TrialLines> trial() {
        return trial;
    }

    @Nullable
    String readout() {
        return readout.getText().strip();
    }
}
