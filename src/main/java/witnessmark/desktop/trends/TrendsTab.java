package witnessmark.desktop.trends;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JViewport;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.chart.Dot;
import witnessmark.desktop.form.ChartOrTable;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.Entry;
import witnessmark.domain.Reading;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Read;
import witnessmark.wording.Texts;

/** What to know first, the places at which an engine is read, and the chart of the one in hand. */
public final class TrendsTab extends JPanel {
    private static final int ROW = 3;
    private static final int SIDE = 476;
    private static final int CHART = 240;
    private static final int HIGH = 220;
    private static final int GAP = 16;
    private static final int BESIDE_FROM = 1000;

    private final TrendsModel model;
    private final Texts texts;
    private final BiConsumer<Entry<Reading>, String> open;
    private final JTextArea answer = Lettering.paragraph("", Styles.STRONG);
    private final SheetTable<TrendLine> table;
    private final ChartOrTable pane;
    private final JPanel controls = new JPanel(new FormLayout("insets 2 0 0 0, gap 8", "push[][]"));
    private final JPanel both = new JPanel(new Placing());
    private List<TrendLine> lines = List.of();
    private String shown = "";
    private boolean beside;

    /**
     * @param open told the reading that is opened, and its words
     * @param say told what was done
     */
    public TrendsTab(
            SheetTools tools, TrendsModel model, BiConsumer<Entry<Reading>, String> open, Consumer<String> say) {
        super(new FormLayout("insets 6 0 0 0, gap 0, fill", "[0::,grow,fill]", "[]4[fill,grow]"));
        this.model = model;
        this.texts = tools.texts();
        this.open = open;
        setOpaque(false);
        table = table(tools);
        pane = new ChartOrTable(tools.texts(), "", table -> table.with(tools, "trends.readings"), this::opened, say);
        controls.setOpaque(false);
        controls.add(pane.toggleButton());
        controls.add(pane.copyButton());
        add(answer, "wmin 0, growx, wrap");
        both.setOpaque(false);
        both.add(table);
        both.add(pane);
        add(both, "grow, wmin 0");
    }

    /** Once the two stand otherwise they need another height, which the page has to be asked for. */
    @Override
    public void doLayout() {
        super.doLayout();
        if (beside != isBeside(both)) {
            beside = isBeside(both);
            revalidate();
        }
    }

    /** Not by its words, which stand in many rows while no width is known: the page would grow for them. */
    @Override
    public Dimension getPreferredSize() {
        boolean below = isVisible() && both.getWidth() > 0 && !isBeside(both); // another tab asks for no more
        return new Dimension(super.getPreferredSize().width, UIScale.scale(below ? HIGH + CHART : HIGH));
    }

    private static boolean isBeside(Container both) {
        return UIScale.unscale(both.getWidth()) >= BESIDE_FROM;
    }

    private SheetTable<TrendLine> table(SheetTools tools) {
        StateWords states = new StateWords(texts);
        SheetTable<TrendLine> made = new SheetTable<>(
                texts.get("trends.tab"),
                List.of(
                        Column.<TrendLine>mark(texts.get("trends.column.mark"), TrendLine::state, states::of)
                                .wide(46),
                        Column.<TrendLine>text(texts.get("trends.column.kind"), TrendLine::kind)
                                .strong()
                                .wide(104),
                        Column.<TrendLine>text(texts.get("trends.column.place"), TrendLine::place)
                                .wide(88),
                        Column.<TrendLine>text(texts.get("trends.column.row"), TrendLine::words)
                                .wide(100)
                                .grow(),
                        Column.<TrendLine>text(texts.get("trends.column.last"), TrendLine::last)
                                .wide(72),
                        Column.<TrendLine>text(texts.get("trends.column.trend"), TrendLine::trend)
                                .inked(TrendLine::going)
                                .wide(80),
                        Column.<TrendLine, Double>figure(
                                        texts.get("trends.column.ahead"), TrendLine::ahead, TrendLine::hours)
                                .inked(TrendLine::limit)
                                .wide(86)),
                TrendLine::id);
        made.with(tools, "trends.list");
        made.column(ROW).setCellRenderer(new DotCell());
        made.onSelect(this::chosen);
        made.onOpen(line -> open.accept(line.newest().reading(), line.answer()));
        made.table().setToolTipText(texts.get("trends.tip"));
        return made;
    }

    /** Shows the readings of another engine, or of the same one anew. */
    public void show(String engine, List<KindTrends> trends) {
        TrendLine before = engine.equals(shown) ? table.selected() : null;
        shown = engine;
        lines = model.lines(trends);
        answer.setText(model.answer(engine, lines));
        answer.getAccessibleContext().setAccessibleName(answer.getText());
        table.table().getAccessibleContext().setAccessibleName(texts.get("trends.list", engine));
        table.show(lines);
        boolean same = before != null && table.select(before.id());
        if (!same && !lines.isEmpty()) {
            table.select(lines.get(0).id());
            if (table.table().getParent() instanceof JViewport over) {
                over.setViewPosition(new Point()); // a list that was never laid out would begin at its second row
            }
        }
        chosen(table.selected());
    }

    private void chosen(@Nullable TrendLine line) {
        Optional<Chart> chart = line == null ? Optional.empty() : model.chart(line);
        pane.show(chart);
    }

    private void opened(Dot point) {
        lines.stream()
                .flatMap(TrendsTab::reads)
                .map(Read::reading)
                .filter(reading -> reading.id().text().equals(point.record()))
                .findFirst()
                .ifPresent(reading -> open.accept(reading, point.words()));
    }

    private static Stream<Read> reads(TrendLine line) {
        PlaceTrend place = line.figures();
        if (place != null) {
            return Stream.of(place.counted(), place.before(), place.apart()).flatMap(List::stream);
        }
        return line.grades() == null ? Stream.of() : line.grades().readings().stream();
    }

    /** What shows the figures and copies, beside the tabs. */
    public JPanel controls() {
        return controls;
    }

    /** What has the focus on arrival. */
    public JComponent first() {
        return table.table();
    }

    /** Comes into view as far as it fits, and takes the focus. */
    public void takeFocus() {
        scrollRectToVisible(new Rectangle(getSize()));
        first().requestFocusInWindow();
    }

    public ChartOrTable pane() {
        return pane;
    }

    SheetTable<TrendLine> rows() {
        return table;
    }

    String answer() {
        return answer.getText();
    }

    /** The chart beside the list, or in a narrow window below it; the list scrolls by itself, so it takes what is left. */
    private final class Placing implements LayoutManager {
        @Override
        public void addLayoutComponent(String name, Component component) {
            // both are known
        }

        @Override
        public void removeLayoutComponent(Component component) {
            // neither is ever taken out
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            return new Dimension(0, 0); // takes what the page has left, see below
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, 0);
        }

        @Override
        public void layoutContainer(Container parent) {
            int gap = UIScale.scale(GAP);
            int wide = parent.getWidth();
            int high = parent.getHeight();
            if (isBeside(parent)) {
                int side = UIScale.scale(SIDE);
                table.setBounds(0, 0, wide - side - gap, high);
                pane.setBounds(wide - side, 0, side, high);
            } else {
                int chart = Math.min(UIScale.scale(CHART), Math.max(pane.getMinimumSize().height, high / 2));
                table.setBounds(0, 0, wide, high - chart - gap);
                pane.setBounds(0, high - chart, wide, chart);
            }
        }
    }
}
