package witnessmark.desktop.traces;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.traces.UnderstoodWords.ColumnLine;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.trace.result.ColumnForm;
import witnessmark.wording.Texts;

/** How the file was read: its signs, and its columns, of which the one in hand can be put right. */
final class ReadPane {
    private final UnderstoodWords words;
    private final JPanel page =
            new JPanel(new MigLayout("insets 10 0 0 0, gap 0, fill", "[0::,grow,fill]", "[]8[0::,grow,fill]8[]"));
    private final JTextArea form = Lettering.paragraph("", Styles.FIELD_LABEL);
    private final SheetTable<ColumnLine> table;
    private final ChoiceBox<ChannelKind> kind;
    private final ChoiceBox<ChannelUnit> unit;
    private boolean loading;

    /**
     * @param asKind told that a column is such a channel
     * @param inUnit told that a column is in such a unit
     */
    ReadPane(
            SheetTools tools,
            UnderstoodWords words,
            BiConsumer<ColumnForm, ChannelKind> asKind,
            BiConsumer<ColumnForm, ChannelUnit> inUnit) {
        this.words = words;
        Texts texts = tools.texts();
        table = new SheetTable<>(
                texts.get("traces.columns"),
                List.of(
                        Column.<ColumnLine>text(texts.get("traces.columns.heading"), ColumnLine::heading)
                                .strong()
                                .wide(105),
                        Column.<ColumnLine>text(texts.get("traces.columns.kind"), ColumnLine::kind)
                                .wide(125),
                        Column.<ColumnLine>text(texts.get("traces.columns.unit"), ColumnLine::unit)
                                .wide(105),
                        Column.<ColumnLine, Integer>figure(
                                        texts.get("traces.columns.least"), ColumnLine::least, ColumnLine::index)
                                .wide(82),
                        Column.<ColumnLine, Integer>figure(
                                        texts.get("traces.columns.most"), ColumnLine::most, ColumnLine::index)
                                .wide(82),
                        Column.<ColumnLine>text(texts.get("traces.columns.first"), ColumnLine::first)
                                .wide(120)
                                .grow()),
                ColumnLine::index);
        table.with(tools, "traces.columns");
        kind = new ChoiceBox<>(texts, Caption.of(texts.get("traces.columns.is")), words::channel);
        unit = new ChoiceBox<>(texts, Caption.of(texts.get("traces.columns.in")), ChannelUnit::code);
        table.onSelect(this::inHand);
        table.onOpen(line -> kind.takeFocus());
        kind.onChange(() -> change(kind.chosen(), asKind));
        unit.onChange(() -> change(unit.chosen(), inUnit));
        page.setOpaque(false);
        page.add(form, "growx, wmin 0, wrap");
        page.add(table, "grow, wmin 0, hmin 90, wrap");
        JPanel row = new JPanel(new MigLayout("insets 0, gap 16, fillx", "[0:280:,grow,fill][0:180:,grow,fill][0::,grow 200]"));
        row.setOpaque(false);
        row.add(kind, "wmin 0");
        row.add(unit, "wmin 0");
        page.add(row, "growx, wmin 0");
        inHand(null);
    }

    JComponent component() {
        return page;
    }

    SheetTable<ColumnLine> table() {
        return table;
    }

    ChoiceBox<ChannelKind> kind() {
        return kind;
    }

    ChoiceBox<ChannelUnit> unit() {
        return unit;
    }

    void show(BroughtTrace trace) {
        form.setText(words.form(trace.found().form()));
        List<ColumnLine> lines = words.columns(trace);
        table.show(lines);
        if (table.selected() == null) {
            lines.stream()
                    .filter(line -> !line.time())
                    .findFirst()
                    .ifPresent(line -> table.select(line.index()));
        }
        inHand(table.selected());
    }

    /** The file could not be read so far. */
    void clear() {
        form.setText("");
        table.show(List.of());
        inHand(null);
    }

    private <T> void change(@Nullable T chosen, BiConsumer<ColumnForm, T> told) {
        ColumnLine line = table.selected();
        if (chosen != null && line != null && !loading) {
            told.accept(line.form(), chosen);
        }
    }

    private void inHand(@Nullable ColumnLine line) {
        loading = true;
        boolean can = line != null && !line.time();
        kind.combo().setEnabled(can);
        unit.combo().setEnabled(can && line.form().kind() != ChannelKind.OTHER);
        if (line == null || !can) {
            kind.load(List.of(), null);
            unit.load(List.of(), null);
        } else {
            kind.load(Arrays.asList(ChannelKind.values()), line.form().kind());
            List<ChannelUnit> units = new ArrayList<>(line.form().kind().units());
            unit.load(units, line.form().unit());
        }
        loading = false;
    }
}
