package witnessmark.desktop.form;

import javax.swing.JLabel;
import javax.swing.JPanel;

/** The head of a page: its title and, on the same line, a note such as the day. */
public final class PageHeading extends JPanel {
    private final JLabel title = Lettering.cutLine("", Styles.TITLE);
    private final JLabel note = Lettering.cutLine("", Styles.NOTE);

    public PageHeading(String title, String note) {
        super(new FormLayout("insets 0, gap 18", "[0::][0::,grow,fill,shrinkprio 200]", "[baseline]"));
        setOpaque(false);
        add(this.title, "wmin 0");
        add(this.note, "wmin 0");
        show(title, note);
    }

    public void show(String newTitle, String newNote) {
        title.setText(newTitle);
        note.setText(newNote);
    }
}
