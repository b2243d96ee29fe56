package witnessmark.desktop.beforewego;

import java.awt.Dimension;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.wording.Texts;

/** Every recorded limit, and every fitted part without one, as a table. */
final class AllMarks extends JPanel {
    private static final int HIGH = 340;

    private final SheetTable<MarkLine> table;

    AllMarks(SheetTools tools, Consumer<MarkLine> open) {
        super(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[fill]"));
        setOpaque(false);
        Texts texts = tools.texts();
        StateWords states = new StateWords(texts);
        table = new SheetTable<>(
                texts.get("beforewego.all"),
                List.of(
                        Column.<MarkLine>mark(texts.get("beforewego.all.mark"), MarkLine::state, states::of)
                                .wide(50),
                        Column.<MarkLine>text(texts.get("beforewego.all.part"), MarkLine::title)
                                .strong()
                                .wide(150)
                                .grow(),
                        Column.<MarkLine>text(texts.get("beforewego.all.where"), MarkLine::place)
                                .wide(96),
                        Column.<MarkLine>text(texts.get("beforewego.all.due"), MarkLine::due)
                                .wide(130)
                                .grow(),
                        Column.<MarkLine, Double>figure(texts.get("beforewego.all.ran"), MarkLine::ran, MarkLine::share)
                                .wide(112),
                        Column.<MarkLine, Double>figure(
                                        texts.get("beforewego.all.limit"), MarkLine::limit, MarkLine::share)
                                .wide(100),
                        Column.<MarkLine, Double>text(texts.get("beforewego.all.left"), MarkLine::left, MarkLine::share)
                                .inked(MarkLine::state)
                                .wide(156)),
                MarkLine::id);
        table.with(tools, "beforewego.marks");
        table.onOpen(open);
        add(table, "growx, h " + HIGH + "!");
    }

    void show(List<MarkLine> lines) {
        table.show(lines);
    }

    void takeFocus() {
        if (table.selected() == null && table.table().getRowCount() > 0) {
            table.table().setRowSelectionInterval(0, 0);
        }
        table.table().requestFocusInWindow();
    }

    SheetTable<MarkLine> table() {
        return table;
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, super.getMinimumSize().height);
    }
}
