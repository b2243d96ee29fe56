package witnessmark.desktop.shelf;

import java.time.LocalDate;
import java.util.List;
import javax.swing.JButton;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.SheetMenu;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.wording.Texts;

/** Stock by batch: how much is there, what is kept of it, and where it runs short. */
final class StockTable {
    private final Texts texts;
    private final ShelfAsked asked;
    private final SheetTable<StockLine> sheet;
    private final JButton newBatch;
    private boolean read;

    StockTable(SheetTools tools, ShelfAsked asked) {
        this.texts = tools.texts();
        this.asked = asked;
        this.sheet =
                new SheetTable<>(texts.get("shelf.stock"), columns(texts), StockLine::id).with(tools, "shelf.stock");
        this.newBatch = Buttons.link(Caption.of(texts.get("shelf.stock.new")), asked.newStock());
        sheet.table().setToolTipText(texts.get("shelf.stock.tip"));
        sheet.menu(this::ways);
        sheet.onOpen(line -> asked.write().accept(line.move()));
    }

    SheetTable<StockLine> sheet() {
        return sheet;
    }

    JButton newBatch() {
        return newBatch;
    }

    void show(ShelfLines lines) {
        newBatch.setVisible(!lines.stock().isEmpty());
        sheet.show(lines.stock());
        if (!read) {
            // not before rows are there, for they keep the focus; nor made before, for no change of theme would reach
            // it
            sheet.whenEmpty(new Empty(
                    texts.get("shelf.empty.stock"), Caption.of(texts.get("shelf.empty.batch")), asked.newStock()));
            read = true;
        }
    }

    /** What can be done with a batch, in the menu's order. */
    List<SheetMenu.Way> ways(StockLine line) {
        return List.of(
                way("shelf.do.move_stock", () -> asked.write().accept(line.move())),
                way("shelf.do.new_stock", asked.newStock()),
                way("shelf.do.correctBatch", () -> asked.correct().accept(line.id())));
    }

    private SheetMenu.Way way(String key, Runnable work) {
        return new SheetMenu.Way(Caption.of(texts.get(key)), work);
    }

    private static List<Column<StockLine>> columns(Texts texts) {
        StateWords states = new StateWords(texts);
        return List.of(
                Column.<StockLine>mark(texts.get("shelf.column.mark"), StockLine::state, states::of)
                        .wide(50),
                Column.<StockLine>text(texts.get("shelf.column.batch"), StockLine::batch)
                        .strong()
                        .wide(100),
                Column.<StockLine>text(texts.get("shelf.column.what"), StockLine::design)
                        .wide(170)
                        .grow(),
                count(texts, "shelf.column.onShelf", StockLine::onShelf, 92),
                count(texts, "shelf.column.kept", StockLine::kept, 100),
                count(texts, "shelf.column.free", StockLine::free, 60),
                Column.<StockLine, Integer>figure(
                                texts.get("shelf.column.least"), StockLine::leastText, StockLine::least)
                        .wide(96),
                Column.<StockLine>text(texts.get("shelf.column.stands"), StockLine::stands)
                        .inked(StockLine::state)
                        .wide(240)
                        .grow(),
                Column.<StockLine, LocalDate>text(texts.get("shelf.column.useBy"), StockLine::useBy, StockLine::day)
                        .wide(116),
                Column.<StockLine>text(texts.get("shelf.column.lies"), StockLine::lies)
                        .wide(110));
    }

    private static Column<StockLine> count(
            Texts texts, String key, java.util.function.Function<StockLine, Integer> count, int wide) {
        return Column.<StockLine, Integer>figure(texts.get(key), line -> String.valueOf(count.apply(line)), count)
                .wide(wide);
    }
}
