package witnessmark.desktop.engines;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.SideBySide;
import witnessmark.desktop.form.StateWords;
import witnessmark.wording.Texts;

/** All engines, and beside them all heads and the other parts that are in no engine. */
final class ListSheets extends JPanel {
    private static final int PARTS_WIDE = 423;
    private static final int BESIDE_FROM = 1000;

    private final FigureTable<EngineLine> engines;
    private final FigureTable<PartLine> parts;

    /**
     * @param open told the figure that is opened
     * @param part told the identity of the part that is opened
     */
    ListSheets(SheetTools tools, Consumer<Shown> open, Consumer<String> part) {
        super(new FormLayout("insets 0, gap 0, fillx", "[0::,grow,fill]", "[fill]"));
        setOpaque(false);
        engines = engines(tools.texts(), open).with(tools, "engines.engines");
        parts = parts(tools.texts(), open, part).with(tools, "engines.heads");
        add(new SideBySide(sheet(engines), sheet(parts), PARTS_WIDE, BESIDE_FROM), "wmin 0");
    }

    void show(EnginesLines lines) {
        engines.sheet().show(lines.engines());
        parts.sheet().show(lines.parts());
    }

    /** Told the identity of the engine in hand. */
    void onChoose(Consumer<String> listener) {
        engines.sheet().onSelect(row -> {
            if (row != null) {
                listener.accept(row.id());
            }
        });
    }

    /** The identity of the engine in hand, or null. */
    @Nullable
    String chosen() {
        EngineLine row = engines.sheet().selected();
        return row == null ? null : row.id();
    }

    /** Takes the first engine in hand: of those that a filter leaves, if it leaves any. */
    void chooseFirst(EnginesLines lines) {
        List<EngineLine> shown = engines.sheet().shown();
        choose((shown.isEmpty() ? lines.engines() : shown).get(0).id());
    }

    boolean choose(String engine) {
        return Objects.equals(chosen(), engine) || engines.sheet().select(engine);
    }

    /** Chooses a head, or another part that is in no engine. */
    void choosePart(String part) {
        parts.sheet().select(part);
    }

    FigureTable<EngineLine> engines() {
        return engines;
    }

    FigureTable<PartLine> parts() {
        return parts;
    }

    private static Sheet sheet(FigureTable<?> table) {
        Sheet sheet = new Sheet("fill, insets 4 14 6 14", "[0::,grow,fill]", "[fill,grow]");
        sheet.add(table.sheet(), "grow, h 156:pref:, w 0:0:");
        return sheet;
    }

    private static FigureTable<EngineLine> engines(Texts texts, Consumer<Shown> open) {
        StateWords states = new StateWords(texts);
        String none = texts.get("engines.none");
        List<FigureColumn<EngineLine>> columns = List.of(
                FigureColumn.words(
                        Column.<EngineLine>mark(texts.get("engines.column.mark"), EngineLine::state, states::of)
                                .wide(50)),
                FigureColumn.words(Column.<EngineLine>text(texts.get("engines.column.engine"), EngineLine::number)
                        .strong()
                        .wide(58)),
                FigureColumn.words(Column.<EngineLine>text(texts.get("engines.column.where"), EngineLine::where)
                        .wide(92)),
                FigureColumn.figure(texts.get("engines.column.running"), EngineLine::running, none, 88),
                FigureColumn.figure(texts.get("engines.column.sinceRebuild"), EngineLine::sinceRebuild, none, 96),
                FigureColumn.words(Column.<EngineLine>text(texts.get("engines.column.worst"), EngineLine::worst)
                        .inked(EngineLine::state)
                        .wide(256)
                        .grow()));
        return new FigureTable<>(
                texts.get("engines.list"), columns, EngineLine::id, texts.get("engines.figure.tip"), open);
    }

    private static FigureTable<PartLine> parts(Texts texts, Consumer<Shown> open, Consumer<String> part) {
        String none = texts.get("engines.none");
        List<FigureColumn<PartLine>> columns = List.of(
                FigureColumn.leading(
                        Column.<PartLine>text(texts.get("engines.column.part"), PartLine::mark)
                                .strong()
                                .wide(66),
                        row -> () -> part.accept(row.id())),
                FigureColumn.words(Column.<PartLine>text(texts.get("engines.column.where"), PartLine::where)
                        .wide(116)
                        .grow()),
                FigureColumn.figure(texts.get("engines.column.running"), PartLine::running, none, 96),
                FigureColumn.figure(texts.get("engines.column.sinceSkim"), PartLine::sinceSkim, "", 100));
        return new FigureTable<>(
                texts.get("engines.heads"), columns, PartLine::id, texts.get("engines.part.tip"), open);
    }
}
