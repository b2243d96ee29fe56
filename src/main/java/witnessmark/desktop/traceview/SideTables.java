package witnessmark.desktop.traceview;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.StackedBar;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** What was found in a trace, beside its rows: marks, figures of what is seen, time at each speed, heat, wear. */
final class SideTables {
    private static final int OVER = 3;
    private static final int OVER_BAR = 4;

    private final SheetTools tools;
    private final Texts texts;
    private final SheetTable<MarkLine> marks;
    private final SheetTable<FigureLine> figures;
    private final JTextArea stretch = Lettering.paragraph("", Styles.QUIET_INK);
    private final SheetTable<BandLine> speeds;
    private final JTextArea laid = Lettering.paragraph("", Styles.QUIET_INK);
    private final SheetTable<RangeLine> ranges;
    private final JTextArea heat = Lettering.paragraph("", Styles.QUIET_INK);
    private final JTextArea wear = Lettering.paragraph("", Styles.ECHO);
    private final Runnable wears;

    SideTables(SheetTools tools, Runnable wears) {
        this.tools = tools;
        this.texts = tools.texts();
        this.wears = wears;
        marks = table("traceview.list.marks", "trace.marks", markColumns());
        marks.table().setToolTipText(texts.get("traceview.marks.tip"));
        marks.whenEmpty(Lettering.paragraph(texts.get("tracekept.noMarks"), Styles.QUIET_INK));
        figures = table("traceview.list.figures", "trace.figures", figureColumns());
        speeds = table("traceview.list.speeds", "trace.speeds", speedColumns());
        speeds.whenEmpty(Lettering.paragraph(texts.get("traceview.speeds.none"), Styles.QUIET_INK));
        ranges = table("traceview.list.ranges", "trace.ranges", rangeColumns());
        ranges.whenEmpty(Lettering.paragraph(texts.get("traceview.ranges.none"), Styles.QUIET_INK));
    }

    private <R> SheetTable<R> table(String name, String key, List<Column<R>> columns) {
        return new SheetTable<R>(texts.get(name), columns, row -> row).with(tools, key);
    }

    private List<Column<MarkLine>> markColumns() {
        return List.of(
                Column.<MarkLine, Double>figure(texts.get("traceview.column.at"), MarkLine::at, MarkLine::seconds)
                        .wide(58),
                Column.<MarkLine>text(texts.get("traceview.column.what"), MarkLine::what)
                        .inked(MarkLine::state)
                        .wide(120)
                        .grow(),
                Column.<MarkLine, String>figure(texts.get("traceview.column.worst"), MarkLine::figure, MarkLine::figure)
                        .wide(70),
                Column.<MarkLine, String>figure(
                                texts.get("traceview.column.lasted"), MarkLine::lasted, MarkLine::lasted)
                        .wide(52),
                Column.<MarkLine>text(texts.get("traceview.column.known"), MarkLine::known)
                        .wide(120)
                        .onAsking());
    }

    private List<Column<FigureLine>> figureColumns() {
        return List.of(
                Column.<FigureLine>text(texts.get("traceview.column.channel"), FigureLine::channel)
                        .strong()
                        .wide(120)
                        .grow(),
                Column.<FigureLine, String>figure(
                                texts.get("traceview.column.least"), FigureLine::least, FigureLine::least)
                        .wide(60),
                Column.<FigureLine, String>figure(
                                texts.get("traceview.column.most"), FigureLine::most, FigureLine::most)
                        .wide(60),
                Column.<FigureLine, String>figure(
                                texts.get("traceview.column.mean"), FigureLine::mean, FigureLine::mean)
                        .wide(60));
    }

    private List<Column<BandLine>> speedColumns() {
        return List.of(
                Column.<BandLine, Integer>text(texts.get("traceview.column.speed"), BandLine::words, BandLine::band)
                        .wide(94),
                Column.<BandLine, Long>figure(
                                texts.get("traceview.column.minutes"), BandLine::minutes, BandLine::millis)
                        .wide(56),
                Column.<BandLine, Long>bar(
                                texts.get("traceview.column.bar"),
                                line -> TracePanel.bar(line.share(), StackedBar.Fill.SOLID),
                                BandLine::minutes,
                                BandLine::millis)
                        .wide(70)
                        .grow(),
                Column.<BandLine, Long>figure(texts.get("traceview.column.over"), BandLine::overMinutes, BandLine::over)
                        .wide(56),
                Column.<BandLine, Long>bar(
                                texts.get("traceview.column.overBar"),
                                line -> TracePanel.bar(line.overShare(), StackedBar.Fill.OUTLINED),
                                BandLine::overMinutes,
                                BandLine::over)
                        .wide(70)
                        .grow());
    }

    private List<Column<RangeLine>> rangeColumns() {
        return List.of(
                Column.<RangeLine>text(texts.get("traceview.column.channel"), RangeLine::channel)
                        .strong()
                        .wide(130)
                        .grow(),
                Column.<RangeLine, Integer>text(texts.get("traceview.column.range"), RangeLine::range, RangeLine::from)
                        .wide(90),
                Column.<RangeLine, String>figure(
                                texts.get("traceview.column.count"), RangeLine::count, RangeLine::count)
                        .wide(60));
    }

    void onMark(Consumer<@Nullable MarkLine> chosen, Consumer<MarkLine> opened) {
        marks.onSelect(chosen);
        marks.onOpen(opened);
    }

    JComponent marks() {
        return room(marks, null);
    }

    JComponent figures() {
        return room(figures, stretch);
    }

    JComponent speeds() {
        return room(speeds, laid);
    }

    JComponent heat() {
        return room(ranges, heat);
    }

    JComponent wear() {
        return TracePanel.scrolled(
                wear,
                page -> page.add(
                        Buttons.plain(Caption.of(texts.get("traceview.wear.write")), wears), "growx 0, align left"));
    }

    private static JComponent room(JComponent table, @Nullable JComponent under) {
        JPanel room = new JPanel(
                new FormLayout("insets 6 0 0 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[fill,grow]6[]"));
        room.setOpaque(false);
        room.add(table, "grow, w 0:0:, h 0:0:, wrap");
        if (under != null) {
            room.add(under, "growx, wmin 0");
        }
        return room;
    }

    void show(TraceModel model, Shown shown) {
        marks.show(model.marks(shown.seen()));
        boolean other = shown.over().isPresent();
        speeds.offer(OVER, other);
        speeds.offer(OVER_BAR, other);
        speeds.show(model.bands(shown));
        laid.setText(shown.over()
                .map(over -> texts.get("traceview.speeds.over", model.shortTitle(over.seen())))
                .orElse(""));
        laid.setVisible(other);
        ranges.show(model.ranges(shown));
        heat.setText(model.words().rangesNote());
        wear.setText(String.join("\n", model.wear(shown)));
    }

    void figures(List<FigureLine> lines, String said) {
        figures.show(lines);
        stretch.setText(said);
    }

    SheetTable<MarkLine> markTable() {
        return marks;
    }

    SheetTable<FigureLine> figureTable() {
        return figures;
    }

    SheetTable<BandLine> speedTable() {
        return speeds;
    }

    String wearSaid() {
        return wear.getText();
    }
}
