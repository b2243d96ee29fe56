package witnessmark.desktop.season;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The lines behind a figure, in the place of the page until it is closed. */
final class LinesPane {
    private final Sheet sheet = new Sheet("fill", "[0::,grow,fill][]", "[]2[]8[0::,grow,fill]");
    private final JTextArea title = Lettering.paragraph("", Styles.SECTION);
    private final SheetTable<CostRow> table;

    /**
     * @param open told the record that is opened
     * @param close brings the page back
     */
    LinesPane(Texts texts, SheetTable<CostRow> table, Consumer<String> open, Runnable close) {
        this.table = table;
        JButton back = Buttons.plain(Caption.of(texts.get("season.lines.back")), close);
        sheet.add(title, "wmin 0, aligny center");
        sheet.add(back, "wrap");
        sheet.add(Lettering.paragraph(texts.get("season.lines.note"), Styles.NOTE), "span, growx, wmin 0, wrap");
        sheet.add(table, "span, grow, w 0:0:, h 140:pref:");
        table.onOpen(row -> open.accept(row.record()));
        FormKeys.bindWithin(sheet, Keys.plain(KeyEvent.VK_ESCAPE), "wm-lines-close", close);
    }

    JComponent component() {
        return sheet;
    }

    void show(String heading, List<CostRow> rows) {
        title.setText(heading);
        SeasonTables.offerLines(table, rows);
        table.show(rows);
    }

    SheetTable<CostRow> table() {
        return table;
    }
}
