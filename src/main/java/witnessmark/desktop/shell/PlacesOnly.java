package witnessmark.desktop.shell;

import javax.swing.DefaultListSelectionModel;
import javax.swing.ListModel;

/** A selection that steps over headings: arriving on one goes on to the next place the same way. */
final class PlacesOnly extends DefaultListSelectionModel {
    private final ListModel<RailRow> rows;

    PlacesOnly(ListModel<RailRow> rows) {
        this.rows = rows;
        setSelectionMode(SINGLE_SELECTION);
    }

    @Override
    public void setSelectionInterval(int anchor, int lead) {
        int before = getMinSelectionIndex();
        int step = before >= 0 && lead < before ? -1 : 1;
        int at = lead;
        while (at >= 0 && at < rows.getSize() && rows.getElementAt(at).isHeading()) {
            at += step;
        }
        if (at >= 0 && at < rows.getSize()) {
            super.setSelectionInterval(at, at);
        }
    }
}
