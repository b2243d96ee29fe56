package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** Draws the rows of the rail: headings in second ink, places in ink, the chosen one as a stroke. */
final class RailCell implements ListCellRenderer<RailRow> {
    private final JPanel heading = new JPanel(new FormLayout("insets 15 18 4 14, fill", "[0::,grow,fill]", "[]"));
    private final JLabel headingText = Lettering.line("", Styles.RAIL_GROUP);
    private final Row row = new Row();
    private final JLabel title = Lettering.line("", Styles.FIELD_LABEL);
    private final JLabel note = Lettering.line("", Styles.STRONG);
    private final String draftWord;
    private Object look = new Object();

    RailCell(Texts texts) {
        draftWord = texts.get("shell.rail.draft");
        heading.setOpaque(false);
        heading.add(headingText);
        row.add(title);
        row.add(note);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends RailRow> list, RailRow value, int index, boolean selected, boolean focused) {
        follow();
        if (value.isHeading()) {
            headingText.setText(value.title());
            heading.invalidate();
            heading.getAccessibleContext().setAccessibleName(value.title());
            return heading;
        }
        Font plain = UIManager.getFont("Label.font");
        title.setFont(selected ? plain.deriveFont(Font.BOLD) : plain);
        title.setText(value.title());
        boolean draft = value.note().draft();
        int waiting = value.note().waiting();
        note.setText(draft ? "\u2022 " + draftWord : waiting > 0 ? Integer.toString(waiting) : "");
        note.setFont(draft ? plain : plain.deriveFont(Font.BOLD));
        Palette ink = selected ? Palette.RAIL_SELECTION_INK : Palette.INK;
        title.setForeground(ink.colour());
        note.setForeground(ink.colour());
        row.invalidate();
        row.selected = selected;
        row.focused = selected && list.isFocusOwner();
        String words = value.noteWords();
        row.getAccessibleContext().setAccessibleName(words.isEmpty() ? value.title() : value.title() + ", " + words);
        return row;
    }

    /** A renderer is in no window: after a change of look it has to be updated by hand. */
    private void follow() {
        Object now = UIManager.getLookAndFeel();
        if (now != look) {
            look = now;
            SwingUtilities.updateComponentTreeUI(heading);
            SwingUtilities.updateComponentTreeUI(row);
        }
    }

    /** A place; chosen, it is filled across the seam. */
    private static final class Row extends JPanel {
        private boolean selected;
        private boolean focused;

        Row() {
            super(new FormLayout("insets 8 18 8 26, fill", "[0::,grow,fill]8[]", "[]"));
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
            int gap = UIScale.scale(1);
            if (selected) {
                g.setColor(Palette.RAIL_SELECTION.colour());
                g.fillRect(0, gap, getWidth(), getHeight() - 2 * gap);
            }
            if (focused) {
                g.setColor(Palette.RAIL_SELECTION_INK.colour());
                int in = UIScale.scale(4);
                g.drawRect(in, in, UIScale.scale(Rail.WIDE) - 2 * in, getHeight() - 2 * in);
            }
        }
    }
}
