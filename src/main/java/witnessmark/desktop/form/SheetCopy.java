package witnessmark.desktop.form;

import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.TransferHandler;

/** Copies the selected rows as shown: tabs between cells, one line a row, with the headings where asked for. */
final class SheetCopy<R> extends TransferHandler {
    private final SheetTable<R> sheet;

    SheetCopy(SheetTable<R> sheet) {
        this.sheet = sheet;
    }

    void install() {
        JTable table = sheet.table();
        table.setTransferHandler(this);
        table.setDropTarget(null); // nothing is dropped on a list: a file goes to the window
        FormKeys.bindWithin(table, Keys.menuShift(KeyEvent.VK_C), "wm-copy-headed", () -> {
            Clipboard clipboard = table.getToolkit().getSystemClipboard();
            clipboard.setContents(new StringSelection(text(true)), null);
        });
    }

    @Override
    public int getSourceActions(JComponent c) {
        return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent c) {
        return new StringSelection(text(false));
    }

    /** The selected rows, columns in the order they stand on the screen. */
    String text(boolean headed) {
        JTable table = sheet.table();
        StringBuilder out = new StringBuilder();
        if (headed) {
            for (int c = 0; c < table.getColumnCount(); c++) {
                out.append(c == 0 ? "" : "\t").append(cell(table.getColumnName(c)));
            }
            out.append('\n');
        }
        for (int at : table.getSelectedRows()) {
            R row = sheet.rows().row(table.convertRowIndexToModel(at));
            for (int c = 0; c < table.getColumnCount(); c++) {
                Column<R> column = sheet.rows().column(table.convertColumnIndexToModel(c));
                out.append(c == 0 ? "" : "\t").append(cell(column.textOf(row)));
            }
            out.append('\n');
        }
        return out.toString();
    }

    private static String cell(String text) {
        return text.replaceAll("[\t\r\n]+", " ");
    }
}
