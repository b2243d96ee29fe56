package witnessmark.desktop.engines;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.quantity.Moment;
import witnessmark.wording.Texts;

/** The build as fitted: every position with what is in it, and which needed ones are empty. */
final class BuildTab extends JPanel {
    private static final int STRIP = 7;

    private final FigureTable<BuildLine> table;
    private final javax.swing.JTextArea asks = Lettering.paragraph("", Styles.STRONG);

    /**
     * @param open told the figure that is opened
     * @param part told the identity of the part that is opened
     */
    BuildTab(SheetTools tools, Consumer<Shown> open, Consumer<String> part) {
        super(new FormLayout("insets 6 0 0 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]4[fill,grow]"));
        setOpaque(false);
        table = table(tools.texts(), open, part).with(tools, "engines.build");
        table.sheet().whenEmpty(Lettering.paragraph(tools.texts().get("engines.build.bare"), Styles.QUIET_INK));
        table.sheet().column(STRIP).setCellRenderer(new StripCell());
        add(asks, "cell 0 0, wmin 0, growx");
        add(table.sheet(), "cell 0 1, grow, hmin 150, wmin 0");
    }

    void show(SheetLines lines) {
        asks.setText(lines.asks());
        asks.getAccessibleContext().setAccessibleName(lines.asks());
        asks.setVisible(!lines.asks().isEmpty());
        table.sheet().show(lines.build());
        revalidate();
    }

    /** Selects the position a part is in. */
    boolean choosePart(String part) {
        return table.sheet().shown().stream()
                .filter(line -> part.equals(line.part()))
                .anyMatch(line -> table.sheet().select(line.id()));
    }

    FigureTable<BuildLine> table() {
        return table;
    }

    private static FigureTable<BuildLine> table(Texts texts, Consumer<Shown> open, Consumer<String> opened) {
        StateWords states = new StateWords(texts);
        List<FigureColumn<BuildLine>> columns = List.of(
                FigureColumn.words(
                        Column.<BuildLine>mark(texts.get("engines.column.mark"), BuildLine::state, states::of)
                                .wide(50)),
                FigureColumn.words(Column.<BuildLine, Integer>text(
                                texts.get("engines.column.position"), BuildLine::position, BuildLine::ordinal)
                        .strong()
                        .wide(124)),
                FigureColumn.leading(
                        Column.<BuildLine>text(texts.get("engines.column.part"), BuildLine::mark)
                                .wide(84),
                        row -> way(row, opened)),
                FigureColumn.words(Column.<BuildLine>text(texts.get("engines.column.design"), BuildLine::design)
                        .wide(190)
                        .grow()),
                FigureColumn.words(Column.<BuildLine, Moment>text(
                                texts.get("engines.column.fitted"), BuildLine::since, BuildLine::from)
                        .wide(64)),
                FigureColumn.figure(texts.get("engines.column.ran"), BuildLine::ran, "", 144),
                FigureColumn.words(Column.<BuildLine, Long>figure(
                                texts.get("engines.column.limit"), BuildLine::limit, line -> null)
                        .wide(96)),
                FigureColumn.words(Column.<BuildLine>text(texts.get("engines.column.strip"), line -> "")
                        .wide(130)),
                FigureColumn.words(Column.<BuildLine>text(texts.get("engines.column.left"), BuildLine::left)
                        .inked(BuildLine::state)
                        .wide(170)));
        return new FigureTable<>(
                texts.get("engines.build"), columns, BuildLine::id, texts.get("engines.part.tip"), open);
    }

    private static @Nullable Runnable way(BuildLine row, Consumer<String> opened) {
        String part = row.part();
        return part == null ? null : () -> opened.accept(part);
    }
}
