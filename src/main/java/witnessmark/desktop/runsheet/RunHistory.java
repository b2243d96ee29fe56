package witnessmark.desktop.runsheet;

import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.history.HistoryLine;
import witnessmark.desktop.history.HistoryTable;
import witnessmark.wording.Texts;

/** In place of a written run's sheet: who changed what of it, when and why. */
final class RunHistory extends JPanel {
    private final JTextArea of = Lettering.paragraph("", Styles.STRONG);
    private final SheetTable<HistoryLine> table;
    private final transient Texts texts;

    /** @param back run when the sheet is wanted again */
    RunHistory(Texts texts, Runnable back) {
        super(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill][]", "[]4[fill,grow]"));
        setOpaque(false);
        this.texts = texts;
        this.table = HistoryTable.of(texts);
        add(of, "wmin 0");
        add(Buttons.link(Caption.of(texts.get("runsheet.written.history.back")), back), "wrap");
        add(table, "span, grow, w 0:0:, hmin 120");
        FormKeys.bindWithin(this, Keys.plain(KeyEvent.VK_ESCAPE), "wm-back", back);
    }

    void show(String named, List<HistoryLine> lines) {
        of.setText(texts.get("history.of", named));
        of.getAccessibleContext().setAccessibleName(of.getText());
        table.show(lines);
    }

    void takeFocus() {
        table.table().requestFocusInWindow();
    }

    SheetTable<HistoryLine> table() {
        return table;
    }
}
