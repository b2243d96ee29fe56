package witnessmark.desktop.traces;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.traces.UnderstoodWords.ColumnLine;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.TimeBase;
import witnessmark.wording.Texts;

/** How the file was read: its signs, and its columns, of which the one in hand can be put right. */
final class ReadPane {
    private final UnderstoodWords words;
    private final JPanel page =
            new JPanel(new FormLayout("insets 10 0 0 0, gap 0, fill", "[0::,grow,fill]", "[]8[0::,grow,fill]8[]"));
    private final JTextArea form = Lettering.paragraph("", Styles.FIELD_LABEL);
    private final SheetTable<ColumnLine> table;
    private final ChoiceBox<ChannelKind> kind;
    private final ChoiceBox<Object> unit;
    private final FieldBox rate;
    private boolean loading;
    /** What was said of samples a second of the file in hand. */
    private String said = "";

    private @Nullable BroughtTrace shown;

    /** @param change told what somebody says of the file, so that it is read again */
    ReadPane(SheetTools tools, UnderstoodWords words, Consumer<Consumer<TraceModel>> change) {
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
        unit = new ChoiceBox<>(texts, Caption.of(texts.get("traces.columns.in")), words::unitOf);
        rate = new FieldBox(Caption.of(texts.get("traces.columns.rate")));
        table.onSelect(this::inHand);
        table.onOpen(line -> kind.takeFocus());
        kind.onChange(() ->
                change(kind.chosen(), (column, chosen) -> change.accept(file -> file.channel(column, chosen))));
        unit.onChange(() -> change(unit.chosen(), (column, chosen) -> {
            if (chosen instanceof TimeBase.Kind time) {
                change.accept(file -> file.time(time));
            } else if (chosen instanceof ChannelUnit other) {
                change.accept(file -> file.unit(column, other));
            }
        }));
        Runnable say = () -> {
            said = rate.text().strip();
            SamplesASecond.read(rate, texts).ifPresent(found -> change.accept(file -> file.rate(found)));
        };
        rate.onEnter(say);
        rate.onLeave(() -> {
            if (isNewRate()) {
                say.run();
            }
        });
        page.setOpaque(false);
        page.add(form, "growx, wmin 0, wrap");
        page.add(table, "grow, wmin 0, hmin 90, wrap");
        JPanel row = new JPanel(
                new FormLayout("insets 0, gap 16, fillx", "[0:240:,grow,fill][0:200:,grow,fill][0:180:,grow,fill]"));
        row.setOpaque(false);
        row.add(kind, "wmin 0");
        row.add(unit, "wmin 0");
        row.add(rate, "wmin 0");
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

    FieldBox rate() {
        return rate;
    }

    /** Where it is said how the time is written. */
    void toTime() {
        table.shown().stream().filter(ColumnLine::time).findFirst().ifPresent(line -> table.select(line.index()));
        (unit.combo().isEnabled() ? unit.combo() : rate.field()).requestFocusInWindow();
    }

    ChoiceBox<Object> unit() {
        return unit;
    }

    void show(BroughtTrace trace) {
        form.setText(words.form(trace.found().form()));
        if (trace != shown) { // what is being typed stays while the logbook changes
            shown = trace;
            said = rateOf(trace.found().form().time());
            rate.load(said);
        }
        List<ColumnLine> lines = words.columns(trace);
        table.show(lines);
        if (table.selected() == null) {
            lines.stream().filter(line -> !line.time()).findFirst().ifPresent(line -> table.select(line.index()));
        }
        inHand(table.selected());
    }

    /** The file could not be read so far. */
    void clear() {
        form.setText("");
        table.show(List.of());
        inHand(null);
    }

    private static String rateOf(TimeBase time) {
        return time.kind() == TimeBase.Kind.RATE && time.known()
                ? BigDecimal.valueOf(time.rate()).stripTrailingZeros().toPlainString()
                : "";
    }

    /** Leaving the field says what Enter has not said already. */
    private boolean isNewRate() {
        String text = rate.text().strip();
        return !text.isEmpty() && !text.equals(said);
    }

    private <T> void change(@Nullable T chosen, BiConsumer<ColumnForm, T> told) {
        ColumnLine line = table.selected();
        if (chosen != null && line != null && !loading) {
            told.accept(line.form(), chosen);
        }
    }

    private void inHand(@Nullable ColumnLine line) {
        loading = true;
        ColumnForm channel = line == null || line.time() ? null : line.form();
        kind.combo().setEnabled(channel != null);
        kind.load(
                channel == null ? List.of() : Arrays.asList(ChannelKind.values()),
                channel == null ? null : channel.kind());
        List<Object> units = new ArrayList<>();
        if (channel != null && channel.kind() != ChannelKind.OTHER) {
            units.addAll(channel.kind().units());
        } else if (line != null && line.inUnit() instanceof TimeBase.Kind now && now.number()) {
            Arrays.stream(TimeBase.Kind.values()).filter(TimeBase.Kind::number).forEach(units::add);
        }
        unit.load(units, line == null || units.isEmpty() ? null : line.inUnit());
        unit.combo().setEnabled(units.size() > 1);
        loading = false;
    }
}
