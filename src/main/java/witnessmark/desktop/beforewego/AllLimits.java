package witnessmark.desktop.beforewego;

import java.awt.Dimension;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.wording.Texts;

/** Every recorded limit, and every fitted part without one, as a table. */
final class AllLimits extends JPanel {
    private static final int HIGH = 340;

    private final SheetTable<LimitLine> table;

    AllLimits(SheetTools tools, Consumer<LimitLine> open) {
        super(new MigLayout("insets 0, fill", "[0::,grow,fill]", "[fill]"));
        setOpaque(false);
        Texts texts = tools.texts();
        StateWords states = new StateWords(texts);
        table = new SheetTable<>(
                texts.get("beforewego.all"),
                List.of(
                        Column.<LimitLine>mark(texts.get("beforewego.all.mark"), LimitLine::state, states::of)
                                .wide(50),
                        Column.<LimitLine>text(texts.get("beforewego.all.part"), LimitLine::title)
                                .strong()
                                .wide(150)
                                .grow(),
                        Column.<LimitLine>text(texts.get("beforewego.all.where"), LimitLine::place)
                                .wide(96),
                        Column.<LimitLine>text(texts.get("beforewego.all.due"), LimitLine::due)
                                .wide(130)
                                .grow(),
                        Column.<LimitLine, Double>figure(
                                        texts.get("beforewego.all.ran"), LimitLine::ran, LimitLine::share)
                                .wide(112),
                        Column.<LimitLine, Double>figure(
                                        texts.get("beforewego.all.limit"), LimitLine::limit, LimitLine::share)
                                .wide(100),
                        Column.<LimitLine, Double>text(
                                        texts.get("beforewego.all.left"), LimitLine::left, LimitLine::share)
                                .inked(LimitLine::state)
                                .wide(156)),
                LimitLine::id);
        table.with(tools, "beforewego.limits");
        table.onOpen(open);
        add(table, "growx, h " + HIGH + "!");
    }

    void show(List<LimitLine> lines) {
        table.show(lines);
    }

    void takeFocus() {
        if (table.selected() == null && table.table().getRowCount() > 0) {
            table.table().setRowSelectionInterval(0, 0);
        }
        table.table().requestFocusInWindow();
    }

    SheetTable<LimitLine> table() {
        return table;
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, super.getMinimumSize().height);
    }
}
