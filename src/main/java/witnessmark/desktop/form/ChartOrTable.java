package witnessmark.desktop.form;

import java.awt.CardLayout;
import java.awt.Toolkit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.wording.Texts;

/** A chart, the same numbers as a table in its place when asked for, and both for the clipboard. */
public final class ChartOrTable extends JPanel {
    private static final String CHART = "chart";
    private static final String TABLE = "table";
    private static final String NOTHING = "nothing";

    private final transient Texts texts;
    private final transient UnaryOperator<SheetTable<List<String>>> kept;
    private final ChartView view;
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final CardLayout cards = new CardLayout();
    private final JPanel shown = new JPanel(cards);
    private final JPanel tableRoom = new JPanel(new MigLayout("insets 0, fill", "[0::,grow,fill]", "[fill,grow]"));
    private final JButton toggle;
    private final JButton copy;
    private transient Optional<Chart> chart = Optional.empty();
    private boolean asTable;

    /**
     * @param nothing said where there is no chart
     * @param kept told each table before it is seen, as to find its columns again
     * @param open told the point whose record is opened
     * @param say told what was done
     */
    public ChartOrTable(
            Texts texts,
            String nothing,
            UnaryOperator<SheetTable<List<String>>> kept,
            Consumer<Dot> open,
            Consumer<String> say) {
        super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[fill,grow]0[]"));
        this.texts = texts;
        this.kept = kept;
        setOpaque(false);
        view = new ChartView(this::read, open);
        toggle = Buttons.link(Caption.of(texts.get("form.chart.asTable")), this::toggle);
        copy = Buttons.link(Caption.of(texts.get("form.chart.copy")), () -> copy(say));
        shown.setOpaque(false);
        tableRoom.setOpaque(false);
        shown.add(view, CHART);
        shown.add(tableRoom, TABLE);
        shown.add(Lettering.paragraph(nothing, Styles.QUIET_INK), NOTHING);
        add(shown, "grow, hmin 140, wmin 0, wrap");
        add(readout, "growx, wmin 0");
    }

    /** Shows another chart, or that there is none. */
    public void show(Optional<Chart> next) {
        chart = next;
        load();
    }

    /** Shows the numbers in place of the chart, or the chart again. */
    public void toggle() {
        asTable = !asTable;
        Caption caption = Caption.of(texts.get(asTable ? "form.chart.asChart" : "form.chart.asTable"));
        toggle.setText(caption.text());
        toggle.setMnemonic(caption.mnemonic());
        load();
    }

    /** Puts picture and numbers on the clipboard. */
    public void copy(Consumer<String> say) {
        ChartCopy copied = view.copy();
        if (copied != null) {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(copied, null);
            say.accept(texts.get("form.chart.copied"));
        }
    }

    public ChartView view() {
        return view;
    }

    /** Turns it into a table and back. */
    public JComponent toggleButton() {
        return toggle;
    }

    public JComponent copyButton() {
        return copy;
    }

    /** The words of the point in hand. */
    public String readout() {
        return readout.getText().strip();
    }

    private void load() {
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
        readout.setVisible(!asTable); // a table has no point in hand
        cards.show(shown, asTable ? TABLE : CHART);
        revalidate();
    }

    private SheetTable<List<String>> table(Chart of) {
        ChartTable table = of.table();
        List<Column<List<String>>> columns = IntStream.range(0, table.headings().size())
                .mapToObj(i -> Column.<List<String>>text(table.headings().get(i), row -> row.get(i))
                        .wide(180)
                        .grow())
                .toList();
        SheetTable<List<String>> sheet = kept.apply(new SheetTable<>(of.finding(), columns, row -> row));
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
