package witnessmark.desktop.shell;

import java.awt.Component;
import java.awt.Graphics;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.Styles;

/** Draws the results of finding. Made anew for each popup, so that it follows the theme. */
final class FoundCell implements ListCellRenderer<FoundRow> {
    private final Row row = new Row();
    private final JLabel heading = Lettering.line("", Styles.RAIL_GROUP);
    private final JPanel headingRow = new JPanel(new FormLayout("insets 8 10 2 10, fill", "[0::,grow,fill]"));
    private final JLabel title = Lettering.line("", Styles.FIELD_LABEL);
    private final JLabel note = Lettering.line("", Styles.NOTE);

    FoundCell() {
        headingRow.setOpaque(false);
        headingRow.add(heading);
        row.add(title, "wmin 0");
        row.add(note, "wmin 0");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends FoundRow> list, FoundRow value, int index, boolean selected, boolean focused) {
        if (value.isHeading()) {
            heading.setText(value.text());
            headingRow.invalidate();
            headingRow.getAccessibleContext().setAccessibleName(value.text());
            return headingRow;
        }
        title.setText(value.text());
        note.setText(value.note());
        title.setForeground((selected ? Palette.RAIL_SELECTION_INK : Palette.INK).colour());
        note.setForeground((selected ? Palette.RAIL_SELECTION_INK : Palette.INK2).colour());
        row.invalidate();
        row.selected = selected;
        String words = value.note().isEmpty() ? value.text() : value.text() + ", " + value.note();
        row.getAccessibleContext().setAccessibleName(words);
        row.setToolTipText(words); // either may be cut
        return row;
    }

    /** One thing found. */
    private static final class Row extends JPanel {
        private boolean selected;

        Row() {
            super(new FormLayout("insets 5 10 5 10, fill", "[0:pref:,fill]12[0:pref:,grow,fill,shrinkprio 200]"));
            setOpaque(false);
        }

        /** A renderer is laid out whether or not it stands in a window. */
        @Override
        public void validate() {
            invalidate();
            doLayout();
        }

        @Override
        protected void paintComponent(Graphics g) {
            if (selected) {
                g.setColor(Palette.RAIL_SELECTION.colour());
                g.fillRect(0, 0, getWidth(), getHeight());
            }
        }
    }
}
