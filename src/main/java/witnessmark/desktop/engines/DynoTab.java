package witnessmark.desktop.engines;

import java.awt.CardLayout;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChartCopy;
import witnessmark.desktop.form.ChartView;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.EventThread;
import witnessmark.study.result.DynoAnswer;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Dyno sheets of an engine: the list, what the one in hand comes to, and power over torque beside its baseline. */
final class DynoTab extends JPanel {
    private static final String CHARTS = "charts";
    private static final String TABLE = "table";
    private static final String NOTHING = "nothing";

    private final SheetTools tools;
    private final Texts texts;
    private final DynoModel model;
    private final SheetTable<DynoLine> list;
    private final JTextArea basis = Lettering.paragraph(" ", Styles.QUIET_INK);
    private final ChartView power;
    private final ChartView torque;
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final CardLayout cards = new CardLayout();
    private final JPanel right = new JPanel(cards);
    private final JPanel tableRoom = new JPanel(new MigLayout("insets 0, fill", "[0::,grow,fill]", "[fill,grow]"));
    private final JTextArea nothing;
    private final JPanel controls = new JPanel(new MigLayout("insets 2 0 0 0, gap 8", "push[][]"));
    private final JButton toggle;
    private final JButton copy;
    private List<DynoAnswer> answers = List.of();
    private boolean asTable;

    /**
     * @param open told which sheet is opened, by the text form of its identity
     * @param say told what was done
     */
    DynoTab(SheetTools tools, Measures measures, Consumer<String> open, Consumer<String> say) {
        super(new MigLayout("insets 6 0 0 0, gap 0, fill", "[352!,fill]14[0::,grow,fill]", "[fill,grow]"));
        this.tools = tools;
        this.texts = tools.texts();
        this.model = new DynoModel(texts, measures);
        setOpaque(false);
        list = new SheetTable<>(texts.get("engines.dyno.list"), columns(), DynoLine::id).with(tools, "engines.dyno");
        list.onSelect(row -> load());
        list.onOpen(row -> open.accept(row.id()));
        list.table().getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                load();
            }
        });
        list.table().setToolTipText(texts.get("engines.dyno.list.tip"));
        power = new ChartView(this::read, dot -> open(dot, open));
        torque = new ChartView(this::read, dot -> open(dot, open));
        nothing = Lettering.paragraph(texts.get("engines.dyno.nothing"), Styles.QUIET_INK);
        toggle = Buttons.link(Caption.of(texts.get("form.chart.asTable")), this::toggle);
        copy = Buttons.link(Caption.of(texts.get("form.chart.copy")), () -> copy(say));
        controls.setOpaque(false);
        controls.add(toggle);
        controls.add(copy);
        layOut();
    }

    private List<Column<DynoLine>> columns() {
        return List.of(
                Column.<DynoLine, LocalDate>text(texts.get("engines.dyno.column.day"), DynoLine::day, DynoLine::sorted)
                        .strong()
                        .wide(132),
                Column.<DynoLine, String>figure(
                                texts.get("engines.dyno.column.power"), DynoLine::power, DynoLine::power)
                        .wide(54),
                Column.<DynoLine, String>figure(
                                texts.get("engines.dyno.column.change"), DynoLine::change, DynoLine::change)
                        .wide(62),
                Column.<DynoLine>text(texts.get("engines.dyno.column.verdict"), DynoLine::verdict)
                        .wide(96)
                        .grow());
    }

    private void layOut() {
        JPanel words = new JPanel(new MigLayout("insets 0, gap 0 4, fillx", "[0::,grow,fill]"));
        words.setOpaque(false);
        words.add(basis, "growx, wmin 0");
        JPanel left =
                new JPanel(new MigLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[110:34%,fill]8[fill,grow]"));
        left.setOpaque(false);
        left.add(list, "grow, hmin 90, wmin 0, wrap");
        left.add(new ScrollPage(words), "grow, hmin 60, wmin 0");
        JPanel charts = new JPanel(
                new MigLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[fill,grow 60]0[fill,grow 40]0[]"));
        charts.setOpaque(false);
        charts.add(power, "grow, hmin 150, wmin 0, wrap");
        charts.add(torque, "grow, hmin 120, wmin 0, wrap");
        charts.add(readout, "growx, wmin 0");
        right.setOpaque(false);
        tableRoom.setOpaque(false);
        right.add(charts, CHARTS);
        right.add(tableRoom, TABLE);
        right.add(nothing, NOTHING);
        add(left, "grow");
        add(right, "grow, wmin 0");
    }

    /** Shows the sheets of another engine, the newest first. */
    void show(List<DynoAnswer> next) {
        answers = List.copyOf(next);
        list.show(model.lines(answers));
        if (list.selected() == null && !answers.isEmpty()) {
            list.select(answers.get(0).sheet().id().text());
        }
        load();
    }

    /** Takes a sheet in hand. @return whether it is one of this engine */
    boolean choose(String sheet) {
        boolean there = list.select(sheet);
        if (there) {
            EventThread.later(() -> scrollRectToVisible(new Rectangle(0, 0, getWidth(), getHeight())));
        }
        return there;
    }

    /** Shows the numbers in place of the charts, or the charts again. */
    void toggle() {
        asTable = !asTable;
        Caption caption = Caption.of(texts.get(asTable ? "form.chart.asChart" : "form.chart.asTable"));
        toggle.setText(caption.text());
        toggle.setMnemonic(caption.mnemonic());
        load();
    }

    /** Puts both charts as one picture and the figures on the clipboard. */
    void copy(Consumer<String> say) {
        ChartCopy above = power.copy();
        ChartCopy below = torque.copy();
        if (above != null && below != null) {
            Toolkit.getDefaultToolkit()
                    .getSystemClipboard()
                    .setContents(new ChartCopy(under(above, below), above.numbers()), null);
            say.accept(texts.get("form.chart.copied"));
        }
    }

    private static BufferedImage under(ChartCopy above, ChartCopy below) {
        int width = above.picture().getWidth(null);
        int height = above.picture().getHeight(null);
        BufferedImage both = new BufferedImage(width, 2 * height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = both.createGraphics();
        g.drawImage(above.picture(), 0, 0, null);
        g.drawImage(below.picture(), 0, height, null);
        g.dispose();
        return both;
    }

    SheetTable<DynoLine> sheets() {
        return list;
    }

    ChartView power() {
        return power;
    }

    ChartView torque() {
        return torque;
    }

    String readout() {
        return readout.getText().strip();
    }

    /** What chooses and copies, beside the tabs. */
    JPanel controls() {
        return controls;
    }

    private static void open(Dot dot, Consumer<String> open) {
        if (dot.record() != null) {
            open.accept(dot.record());
        }
    }

    private List<String> chosen() {
        List<DynoLine> rows = list.shown();
        List<String> chosen = new ArrayList<>();
        for (int row : list.table().getSelectedRows()) {
            if (row < rows.size()) {
                chosen.add(rows.get(row).id());
            }
        }
        return chosen;
    }

    private void load() {
        DynoModel.Shown next = model.shown(answers, chosen()).orElse(null);
        Chart curve = next == null ? null : next.power();
        copy.setEnabled(curve != null);
        toggle.setEnabled(curve != null);
        basis.setText(next == null ? " " : String.join("\n", next.basis()));
        if (next == null || curve == null || next.torque() == null) {
            power.clear();
            torque.clear();
            nothing.setText(
                    next == null
                            ? texts.get("engines.dyno.nothing")
                            : texts.get("engines.dyno.noCurve", next.answer()));
            cards.show(right, NOTHING);
            return;
        }
        power.show(curve);
        torque.show(next.torque());
        tableRoom.removeAll();
        tableRoom.add(table(next.table(), curve.finding()), "grow, w 0:0:");
        cards.show(right, asTable ? TABLE : CHARTS);
        revalidate();
    }

    private SheetTable<List<String>> table(ChartTable table, String name) {
        List<Column<List<String>>> columns = IntStream.range(0, table.headings().size())
                .mapToObj(i -> Column.<List<String>, String>figure(
                                table.headings().get(i), row -> row.get(i), row -> row.get(i))
                        .wide(110)
                        .grow())
                .toList();
        SheetTable<List<String>> sheet = new SheetTable<>(name, columns, row -> row).with(tools, "engines.dyno.table");
        sheet.show(table.rows());
        return sheet;
    }

    private void read(@Nullable String said) {
        readout.setText(said == null || said.isEmpty() ? " " : said);
    }
}
