package witnessmark.desktop.engines;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.SheetTools;
import witnessmark.wording.Texts;

/** The life of an engine or part by every counter that runs feed. */
final class LivesTab extends JPanel {
    private static final int SINCE_REBUILD = 2;

    private final FigureTable<CounterLine> table;

    /** @param key the list's own name among the settings */
    LivesTab(SheetTools tools, String key, Consumer<Shown> open) {
        super(new FormLayout("insets 6 0 0 0, fill", "[0::,grow,fill]", "[fill,grow]"));
        setOpaque(false);
        Texts texts = tools.texts();
        List<FigureColumn<CounterLine>> columns = List.of(
                FigureColumn.words(Column.<CounterLine>text(texts.get("engines.column.counter"), CounterLine::counter)
                        .strong()
                        .wide(160)),
                FigureColumn.figure(texts.get("engines.column.whole"), CounterLine::whole, "", 150),
                FigureColumn.figure(texts.get("engines.column.sinceRebuild"), CounterLine::sinceRebuild, "", 150),
                FigureColumn.words(Column.<CounterLine>text(texts.get("engines.column.basis"), CounterLine::basis)
                        .wide(280)
                        .grow()));
        table = new FigureTable<>(
                        texts.get("engines.lives"), columns, CounterLine::id, texts.get("engines.figure.tip"), open)
                .with(tools, key);
        add(table.sheet(), "grow, hmin 150, wmin 0");
    }

    void show(List<CounterLine> lives) {
        table.sheet().offer(SINCE_REBUILD, lives.stream().anyMatch(line -> line.sinceRebuild() != null));
        table.sheet().show(lives);
    }

    FigureTable<CounterLine> table() {
        return table;
    }
}
