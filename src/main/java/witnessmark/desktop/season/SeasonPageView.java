package witnessmark.desktop.season;

import java.awt.Rectangle;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.EventThread;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.Texts;

/** The season from top to bottom. */
final class SeasonPageView extends JPanel {
    private final Texts texts;
    private final ChoiceBox<String> season;
    private final ChoiceBox<BarsBy> by;
    private final SeasonHead head;
    private final SheetTable<FailureLine> failures;
    private final SheetTable<BarLine> bars;
    private final SheetTable<KindLine> kinds;
    private final SeasonLineView line;
    private final SheetTable<BudgetLine> budget;
    private final SheetTable<DecisionLine> decisions;
    private final SheetTable<SettleLine> settle;
    private final SheetTable<CostRow> income;
    private final SheetTable<BesideLine> beside;
    private final JLabel readout = Lettering.cutLine("", Styles.ECHO);
    private final JLabel failuresTitle = Lettering.line("", Styles.SECTION);
    private final JLabel kindsTitle = Lettering.line("", Styles.SECTION);
    private final JLabel settleTitle = Lettering.line("", Styles.SECTION);
    private final JTextArea settleNotes = Lettering.paragraph("", Styles.NOTE);
    private SeasonLines shown = SeasonLines.NONE;

    /** Told what is chosen and opened. */
    interface Told {
        void season(String name);

        void switches(Switches switches);

        void by(BarsBy by);

        /** The lines behind a figure are wanted; the focus goes back to where it was. */
        void behind(Behind figure, JComponent from);

        void settled(String record);

        void decision(DecisionLine decision);
    }

    SeasonPageView(SheetTools tools, Measures measures, SeasonLeads leads, Told told) {
        super(new FormLayout("insets 0, gap 0 12, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        setOpaque(false);
        this.texts = tools.texts();
        MoneyWords money = new MoneyWords(texts, measures);
        SeasonTables tables = new SeasonTables(tools, money, () -> shown.totals());
        season = new ChoiceBox<>(texts, Caption.of(texts.get("season.choose")), name -> name);
        by = new ChoiceBox<>(
                texts, Caption.of(texts.get("season.by")), each -> texts.get("season.by.each", money.by(each)));
        head = new SeasonHead(texts, () -> told.switches(switches()));
        failures = tables.failures();
        bars = tables.bars();
        kinds = tables.kinds();
        line = new SeasonLineView(texts, this::openFailure, this::read);
        budget = tables.budget();
        decisions = tables.decisions();
        settle = tables.settle();
        income = tables.income();
        beside = tables.beside();
        by.load(List.of(BarsBy.values()), BarsBy.INCIDENT);
        listen(told);
        layOut(leads, money);
    }

    private void listen(Told told) {
        season.onChange(() -> told.season(String.valueOf(season.chosen())));
        by.onChange(() -> {
            @Nullable BarsBy now = by.chosen();
            told.by(now == null ? BarsBy.INCIDENT : now);
        });
        failures.onOpen(row -> told.behind(row.behind(), failures.table()));
        bars.onOpen(row -> told.behind(row.behind(), bars.table()));
        kinds.onOpen(row -> told.behind(row.behind(), kinds.table()));
        budget.onOpen(row -> told.behind(row.behind(), budget.table()));
        decisions.onOpen(told::decision);
        settle.onOpen(row -> told.settled(row.record()));
        income.onOpen(row -> told.settled(row.record()));
        onFailure = record -> shown.failures().stream()
                .filter(row -> row.id().equals(record))
                .findFirst()
                .ifPresent(row -> told.behind(row.behind(), line));
    }

    private Consumer<String> onFailure = record -> {};

    private void openFailure(String record) {
        onFailure.accept(record);
    }

    private void layOut(SeasonLeads leads, MoneyWords money) {
        JPanel top = row("fillx", "[][]push[][][]");
        top.add(season.label());
        top.add(season.combo(), "w 0:120:");
        top.add(Buttons.plain(
                Caption.of(texts.get("season.write")), () -> leads.write().accept(Prefilled.empty("write_cost"))));
        top.add(Buttons.plain(Caption.of(texts.get("season.export")), leads.export()));
        top.add(Buttons.plain(Caption.of(texts.get("seasonsheet.button")), leads.print()));
        add(top, "growx, wmin 0");
        add(head.component(), "growx");
        add(section(failuresTitle, null, failures), "growx");
        JPanel choice = row("", "[][]");
        choice.add(by.label());
        choice.add(by.combo(), "w 0:190:");
        Sheet went = section(title("season.bars"), choice, bars);
        went.add(legend(money), "span, growx, gaptop 4");
        add(went, "growx");
        Sheet each = section(kindsTitle, null, kinds);
        each.add(Lettering.paragraph(texts.get("season.kinds.note"), Styles.NOTE), "span, growx, wmin 0, gaptop 4");
        add(each, "growx");
        Sheet along = section(title("season.line"), null, line);
        along.add(readout, "span, growx, wmin 0, hmin 18");
        along.add(Lettering.paragraph(texts.get("season.line.legend"), Styles.NOTE), "span, growx, wmin 0");
        add(along, "growx");
        add(section(title("season.budget"), null, budget), "growx");
        add(section(title("season.decisions"), null, decisions), "growx");
        Sheet open = section(settleTitle, null, settle);
        open.add(settleNotes, "span, growx, wmin 0, gaptop 4");
        add(open, "growx");
        add(section(title("season.income"), null, income), "growx");
        add(section(title("season.beside"), null, beside), "growx");
    }

    private JLabel title(String key) {
        return Lettering.line(texts.get(key), Styles.SECTION);
    }

    private static JPanel row(String layout, String columns) {
        JPanel row = new JPanel(new FormLayout("insets 0, gap 8 0, " + layout, columns, "[center]"));
        row.setOpaque(false);
        return row;
    }

    private static Sheet section(JLabel title, @Nullable JComponent beside, JComponent body) {
        Sheet sheet = new Sheet("fillx", "[0::,grow,fill][]", "");
        sheet.add(title, "wmin 0, aligny center");
        sheet.add(beside == null ? new JLabel() : beside, "wrap 6");
        sheet.add(body, "span, growx, w 0:0:, wrap");
        return sheet;
    }

    private JPanel legend(MoneyWords money) {
        JPanel legend = new JPanel(new FormLayout("insets 0, gapx 8"));
        legend.setOpaque(false);
        for (Place place : SeasonModel.COLUMNS) {
            legend.add(new JLabel(new FillIcon(BarModel.fill(place))));
            legend.add(Lettering.line(money.column(place).toLowerCase(Locale.ROOT), Styles.NOTE), "gapright 12");
        }
        return legend;
    }

    void show(SeasonLines lines) {
        shown = lines;
        season.load(lines.seasons(), lines.season());
        by.choose(lines.asked().by());
        head.show(lines, texts);
        failuresTitle.setText(texts.get("season.failures.title", lines.currency()));
        offerColumns(lines.asked().switches());
        failures.show(lines.failures());
        bars.offer(5, lines.perHour());
        bars.show(lines.bars());
        kindsTitle.setText(texts.get("season.kinds.title", lines.currency()));
        kinds.show(lines.kinds());
        line.show(lines.line(), lines.lineWords());
        budget.show(lines.budget());
        decisions.show(lines.decisions());
        settleTitle.setText(texts.get("season.settle.title", lines.currency()));
        settle.show(lines.settle());
        settleNotes.setText(String.join("\n", lines.settleNotes()));
        income.show(lines.income());
        beside.show(lines.beside());
        asNeeded(failures, !lines.failures().isEmpty());
        asNeeded(bars, !lines.bars().isEmpty());
        asNeeded(kinds, !lines.kinds().isEmpty());
        asNeeded(line, !lines.line().rows().isEmpty());
        asNeeded(budget, !lines.budget().isEmpty());
        asNeeded(decisions, !lines.decisions().isEmpty());
        asNeeded(settle, !lines.settle().isEmpty());
        asNeeded(income, !lines.income().isEmpty());
        revalidate();
        repaint();
    }

    /** A column that the total does not take in would keep the row from adding up. */
    private void offerColumns(Switches switches) {
        failures.offer(SeasonTables.FIRST_COLUMN + 1, switches.labour());
        failures.offer(SeasonTables.FIRST_COLUMN + 2, switches.missed());
        failures.offer(SeasonTables.FIRST_COLUMN + 3, switches.spoiled());
    }

    /** A part of the page with nothing in it is not there. */
    private static void asNeeded(JComponent body, boolean yes) {
        body.getParent().setVisible(yes);
    }

    private void read(String words) {
        readout.setText(words);
    }

    /** Brings a part of the page into view, once it is laid out. */
    static void bringIntoView(SheetTable<?> part) {
        EventThread.later(() -> {
            JComponent section = (JComponent) part.getParent();
            section.scrollRectToVisible(new Rectangle(section.getSize()));
        });
    }

    JComponent firstFocus() {
        boolean rows = shown == SeasonLines.NONE || !shown.failures().isEmpty();
        return failures.isShowing() && rows ? failures.table() : season.combo();
    }

    Switches switches() {
        return head.boxes().chosen();
    }

    ChoiceBox<BarsBy> by() {
        return by;
    }

    ChoiceBox<String> season() {
        return season;
    }

    SeasonHead head() {
        return head;
    }

    SheetTable<FailureLine> failures() {
        return failures;
    }

    SheetTable<BarLine> bars() {
        return bars;
    }

    SheetTable<KindLine> kinds() {
        return kinds;
    }

    SheetTable<BudgetLine> budget() {
        return budget;
    }

    SheetTable<SettleLine> settle() {
        return settle;
    }

    SheetTable<DecisionLine> decisions() {
        return decisions;
    }

    SeasonLineView line() {
        return line;
    }
}
