package witnessmark.desktop.engines;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JPanel;
import witnessmark.chart.Chart;
import witnessmark.chart.Dot;
import witnessmark.desktop.engines.CurvesModel.Which;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChartOrTable;
import witnessmark.desktop.form.ChartView;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.SheetTools;
import witnessmark.wording.Texts;

/** The chart of running time since rebuild and skim, and which lines are on it. */
final class CurvesTab extends JPanel {
    private final ChoiceBox<Which> which;
    private final ChartOrTable chart;
    private final JPanel controls = new JPanel(new FormLayout("insets 2 0 0 0, gap 8", "push[][][]"));
    private Function<Which, Optional<Chart>> charts = w -> Optional.empty();

    /**
     * @param open told the point whose record is opened
     * @param say told what was done
     */
    CurvesTab(SheetTools tools, Consumer<Dot> open, Consumer<String> say) {
        super(new FormLayout("insets 4 0 0 0, gap 0, fill", "[0::,grow,fill]", "[fill,grow]"));
        Texts texts = tools.texts();
        setOpaque(false);
        which = new ChoiceBox<>(texts, Caption.of(texts.get("engines.curves.which")), w -> texts.get(w.key()));
        which.load(List.of(Which.values()), Which.THIS);
        which.onChange(this::load);
        chart = new ChartOrTable(
                texts, texts.get("engines.curves.nothing"), table -> table.with(tools, "engines.curves"), open, say);
        controls.setOpaque(false);
        controls.add(which.combo(), "w 200!, h 24!");
        controls.add(chart.toggleButton());
        controls.add(chart.copyButton());
        add(chart, "grow, wmin 0");
        which.combo().getAccessibleContext().setAccessibleName(texts.get("engines.curves.which.name"));
    }

    /** Shows another engine's chart. */
    void show(Function<Which, Optional<Chart>> next) {
        charts = next;
        load();
    }

    ChartOrTable chart() {
        return chart;
    }

    ChartView view() {
        return chart.view();
    }

    /** What chooses and copies, beside the tabs. */
    JPanel controls() {
        return controls;
    }

    ChoiceBox<Which> which() {
        return which;
    }

    String readout() {
        return chart.readout();
    }

    private void load() {
        Which wanted = which.chosen();
        chart.show(charts.apply(wanted == null ? Which.THIS : wanted));
    }
}
