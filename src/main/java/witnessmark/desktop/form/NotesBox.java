package witnessmark.desktop.form;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/** A long input: label, text over several lines, note line. Tab leaves it; Enter starts a new line. */
public final class NotesBox extends LabelledBox {
    private final JTextArea area;
    private final TextUndo undo;

    public NotesBox(Caption caption, int rows) {
        this(caption, new JTextArea(rows, 20));
    }

    private NotesBox(Caption caption, JTextArea area) {
        super(caption, area, framed(area), true);
        this.area = area;
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        Traversal.tabLeaves(area);
        undo = TextUndo.install(area);
    }

    private static JScrollPane framed(JTextArea area) {
        JScrollPane scroll = new JScrollPane(area);
        Styles.as(Styles.FIELD, scroll);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    public JTextArea area() {
        return area;
    }

    public String text() {
        return area.getText();
    }

    /** Loads a value: it cannot be taken back with Ctrl+Z. */
    public void load(String text) {
        area.setText(text);
        area.setCaretPosition(0);
        undo.clear();
    }

    public void onChange(Runnable listener) {
        area.getDocument().addDocumentListener(new TextChange(listener));
    }

    public void onLeave(Runnable listener) {
        area.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    listener.run();
                }
            }
        });
    }
}
