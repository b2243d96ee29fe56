package witnessmark.desktop.engines;

import java.awt.Rectangle;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.chart.Chart;
import witnessmark.chart.Dot;
import witnessmark.desktop.form.ChartOrTable;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
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
    private final Texts texts;
    private final DynoModel model;
    private final SheetTable<DynoLine> list;
    private final JTextArea basis = Lettering.paragraph(" ", Styles.QUIET_INK);
    private final ChartOrTable charts;
    private final JPanel controls = new JPanel(new FormLayout("insets 2 0 0 0, gap 8", "push[][]"));
    private List<DynoAnswer> answers = List.of();

    /**
     * @param open told which sheet is opened, by the text form of its identity
     * @param say told what was done
     */
    DynoTab(SheetTools tools, Measures measures, Consumer<String> open, Consumer<String> say) {
        super(new FormLayout("insets 6 0 0 0, gap 0, fill", "[352!,fill]14[0::,grow,fill]", "[fill,grow]"));
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
        charts = new ChartOrTable(
                texts,
                texts.get("engines.dyno.nothing"),
                table -> table.with(tools, "engines.dyno.table"),
                dot -> open(dot, open),
                say,
                2);
        controls.setOpaque(false);
        controls.add(charts.toggleButton());
        controls.add(charts.copyButton());
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
        JPanel words = new JPanel(new FormLayout("insets 0, gap 0 4, fillx", "[0::,grow,fill]"));
        words.setOpaque(false);
        words.add(basis, "growx, wmin 0");
        JPanel left =
                new JPanel(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[110:34%,fill]8[fill,grow]"));
        left.setOpaque(false);
        left.add(list, "grow, hmin 90, wmin 0, wrap");
        left.add(new ScrollPage(words), "grow, hmin 60, wmin 0");
        add(left, "grow");
        add(charts, "grow, wmin 0");
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

    /**
     * Takes a sheet in hand.
     *
     * @return whether it is one of this engine
     */
    boolean choose(String sheet) {
        boolean there = list.select(sheet);
        if (there) {
            EventThread.later(() -> scrollRectToVisible(new Rectangle(0, 0, getWidth(), getHeight())));
        }
        return there;
    }

    SheetTable<DynoLine> sheets() {
        return list;
    }

    /** Power, and below it torque. */
    ChartOrTable charts() {
        return charts;
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
        basis.setText(next == null ? " " : String.join("\n", next.basis()));
        Chart power = next == null ? null : next.power();
        Chart torque = next == null ? null : next.torque();
        if (power != null && torque != null) {
            charts.show(List.of(power, torque));
        } else {
            charts.showNothing(
                    next == null
                            ? texts.get("engines.dyno.nothing")
                            : texts.get("engines.dyno.noCurve", next.answer()));
        }
    }
}
