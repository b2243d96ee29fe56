package witnessmark.desktop.form;

import java.awt.CardLayout;
import java.awt.Toolkit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.wording.Texts;

/**
 * A chart, or several below each other that show the same stretch of one axis; the same numbers as a table in their place
 * when asked for, and both for the clipboard.
 */
public final class ChartOrTable extends JPanel {
    private static final Pattern FIGURE = Pattern.compile("[+\u2212-]?[\\d\u2009\u202f ]*[.,]?\\d+( %)?|\u2013|");
    private static final String CHART = "chart";
    private static final String TABLE = "table";
    private static final String NOTHING = "nothing";

    private final transient Texts texts;
    private final transient UnaryOperator<SheetTable<List<String>>> kept;
    private final List<ChartView> views;
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final CardLayout cards = new CardLayout();
    private final JPanel shown = new JPanel(cards);
    private final JPanel tableRoom = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[fill,grow]"));
    private final JButton toggle;
    private final JButton copy;
    private final JTextArea nothing;
    private transient List<Chart> charts = List.of();
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
        this(texts, nothing, kept, open, say, 1);
    }

    /**
     * The same for several charts below each other.
     *
     * @param count how many, 1 or more
     */
    public ChartOrTable(
            Texts texts,
            String nothing,
            UnaryOperator<SheetTable<List<String>>> kept,
            Consumer<Dot> open,
            Consumer<String> say,
            int count) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[fill,grow]0[]"));
        this.texts = texts;
        this.kept = kept;
        setOpaque(false);
        views = IntStream.range(0, count)
                .mapToObj(i -> new ChartView(said -> read(i, said), open))
                .toList();
        views.forEach(view -> view.onSeen(
                chart -> views.stream().filter(other -> other != view).forEach(other -> other.see(chart))));
        this.nothing = Lettering.paragraph(nothing, Styles.QUIET_INK);
        toggle = Buttons.link(Caption.of(texts.get("form.chart.asTable")), this::toggle);
        copy = Buttons.link(Caption.of(texts.get("form.chart.copy")), () -> copy(say));
        shown.setOpaque(false);
        tableRoom.setOpaque(false);
        shown.add(stacked(), CHART);
        shown.add(tableRoom, TABLE);
        shown.add(this.nothing, NOTHING);
        add(shown, "grow, hmin 140, wmin 0, wrap");
        add(readout, "growx, wmin 0");
    }

    /** The first a little higher than those below it. */
    private JComponent stacked() {
        if (views.size() == 1) {
            return views.get(0);
        }
        JPanel stack = new JPanel(new FormLayout("insets 0, gap 0, fill, wrap 1", "[0::,grow,fill]"));
        stack.setOpaque(false);
        for (ChartView view : views) {
            stack.add(
                    view,
                    view == views.get(0) ? "grow, wmin 0, pushy 60, hmin 150" : "grow, wmin 0, pushy 40, hmin 120");
        }
        return stack;
    }

    /** Shows another chart, or that there is none. */
    public void show(Optional<Chart> next) {
        charts = next.map(List::of).orElse(List.of());
        load();
    }

    /** Shows as many charts as there are views, whose table is that of the first. */
    public void show(List<Chart> next) {
        charts = List.copyOf(next);
        load();
    }

    /** Says why there is none. */
    public void showNothing(String why) {
        nothing.setText(why);
        charts = List.of();
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
        List<ChartCopy> copies =
                views.stream().map(ChartView::copy).filter(Objects::nonNull).toList();
        if (!copies.isEmpty()) {
            ChartCopy all = copies.size() == 1 ? copies.get(0) : ChartCopy.under(copies);
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(all, null);
            say.accept(texts.get("form.chart.copied"));
        }
    }

    /** The first chart. */
    public ChartView view() {
        return views.get(0);
    }

    /** All of them, from the top. */
    public List<ChartView> views() {
        return views;
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
        copy.setEnabled(!charts.isEmpty());
        toggle.setEnabled(!charts.isEmpty());
        if (charts.isEmpty()) {
            views.forEach(ChartView::clear);
            cards.show(shown, NOTHING);
            return;
        }
        for (int i = 0; i < views.size(); i++) {
            views.get(i).show(charts.get(i));
        }
        tableRoom.removeAll();
        tableRoom.add(table(charts.get(0)), "grow, w 0:0:");
        readout.setVisible(!asTable); // a table has no point in hand
        cards.show(shown, asTable ? TABLE : CHART);
        revalidate();
    }

    private SheetTable<List<String>> table(Chart of) {
        ChartTable table = of.table();
        List<Column<List<String>>> columns = IntStream.range(0, table.headings().size())
                .mapToObj(i -> column(table, i))
                .toList();
        SheetTable<List<String>> sheet = kept.apply(new SheetTable<>(of.finding(), columns, row -> row));
        sheet.show(table.rows());
        return sheet;
    }

    /** Figures are set right, words left. */
    private static Column<List<String>> column(ChartTable table, int index) {
        String heading = table.headings().get(index);
        boolean figures = table.rows().stream()
                .allMatch(row -> FIGURE.matcher(row.get(index)).matches());
        return figures
                ? Column.<List<String>, String>figure(heading, row -> row.get(index), row -> row.get(index))
                        .wide(110)
                        .grow()
                : Column.<List<String>>text(heading, row -> row.get(index))
                        .wide(180)
                        .grow();
    }

    private void read(int chart, @Nullable String words) {
        readout.setText(words == null || words.isEmpty() ? " " : words);
        if (words != null && !words.isEmpty()) {
            views.get(chart).getAccessibleContext().setAccessibleDescription(words);
        }
    }
}
