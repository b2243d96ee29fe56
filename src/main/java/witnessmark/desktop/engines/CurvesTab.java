package witnessmark.desktop.engines;

import java.awt.CardLayout;
import java.awt.Toolkit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.desktop.engines.CurvesModel.Which;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChartCopy;
import witnessmark.desktop.form.ChartView;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The chart of running time since rebuild and skim, and the same numbers as a table. */
final class CurvesTab extends JPanel {
    private static final String CHART = "chart";
    private static final String TABLE = "table";
    private static final String NOTHING = "nothing";

    private final SheetTools tools;
    private final Texts texts;
    private final ChoiceBox<Which> which;
    private final ChartView view;
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final CardLayout cards = new CardLayout();
    private final JPanel shown = new JPanel(cards);
    private final JPanel tableRoom = new JPanel(new MigLayout("insets 0, fill", "[0::,grow,fill]", "[fill,grow]"));
    private final JPanel controls = new JPanel(new MigLayout("insets 2 0 0 0, gap 8", "push[][][]"));
    private final JButton toggle;
    private final JButton copy;
    private Function<Which, Optional<Chart>> charts = w -> Optional.empty();
    private boolean asTable;

    /**
     * @param open told the point whose record is opened
     * @param say told what was done
     */
    CurvesTab(SheetTools tools, Consumer<Dot> open, Consumer<String> say) {
        super(new MigLayout("insets 4 0 0 0, gap 0, fill", "[0::,grow,fill]", "[fill,grow]0[]"));
        this.tools = tools;
        this.texts = tools.texts();
        setOpaque(false);
        which = new ChoiceBox<>(texts, Caption.of(texts.get("engines.curves.which")), w -> texts.get(w.key()));
        which.load(List.of(Which.values()), Which.THIS);
        which.onChange(this::load);
        view = new ChartView(this::read, open);
        toggle = Buttons.link(Caption.of(texts.get("engines.curves.asTable")), this::toggle);
        copy = Buttons.link(Caption.of(texts.get("engines.curves.copy")), () -> copy(say));
        shown.setOpaque(false);
        tableRoom.setOpaque(false);
        shown.add(view, CHART);
        shown.add(tableRoom, TABLE);
        shown.add(Lettering.paragraph(texts.get("engines.curves.nothing"), Styles.QUIET_INK), NOTHING);
        controls.setOpaque(false);
        controls.add(which.combo(), "w 200!, h 24!");
        controls.add(toggle);
        controls.add(copy);
        add(shown, "grow, hmin 170, wmin 0, wrap");
        add(readout, "growx, wmin 0");
        which.combo().getAccessibleContext().setAccessibleName(texts.get("engines.curves.which.name"));
    }

    /** Shows another engine's chart. */
    void show(Function<Which, Optional<Chart>> next) {
        charts = next;
        load();
    }

    /** Shows the numbers in place of the chart, or the chart again. */
    void toggle() {
        asTable = !asTable;
        Caption caption = Caption.of(texts.get(asTable ? "engines.curves.asChart" : "engines.curves.asTable"));
        toggle.setText(caption.text());
        toggle.setMnemonic(caption.mnemonic());
        load();
    }

    void copy(Consumer<String> say) {
        ChartCopy copied = view.copy();
        if (copied != null) {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(copied, null);
            say.accept(texts.get("engines.curves.copied"));
        }
    }

    ChartView view() {
        return view;
    }

    /** What chooses and copies, beside the tabs. */
    JPanel controls() {
        return controls;
    }

    ChoiceBox<Which> which() {
        return which;
    }

    String readout() {
        return readout.getText().strip();
    }

    private void load() {
        Which wanted = which.chosen();
        Optional<Chart> chart = charts.apply(wanted == null ? Which.THIS : wanted);
        copy.setEnabled(chart.isPresent());
        toggle.setEnabled(chart.isPresent());
        if (chart.isEmpty()) {
            view.clear();
            cards.show(shown, NOTHING);
            return;
        }
        view.show(chart.get());
        tableRoom.removeAll();
        tableRoom.add(table(chart.get()), "grow, w 0:0:");
        cards.show(shown, asTable ? TABLE : CHART);
        revalidate();
    }

    private SheetTable<List<String>> table(Chart chart) {
        ChartTable table = chart.table();
        List<Column<List<String>>> columns = IntStream.range(0, table.headings().size())
                .mapToObj(i -> Column.<List<String>>text(table.headings().get(i), row -> row.get(i))
                        .wide(180)
                        .grow())
                .toList();
        SheetTable<List<String>> sheet =
                new SheetTable<>(chart.finding(), columns, row -> row).with(tools, "engines.curves");
        sheet.show(table.rows());
        return sheet;
    }

    private void read(@Nullable String words) {
        readout.setText(words == null || words.isEmpty() ? " " : words);
        if (words != null && !words.isEmpty()) {
            view.getAccessibleContext().setAccessibleDescription(words);
        }
    }
}
