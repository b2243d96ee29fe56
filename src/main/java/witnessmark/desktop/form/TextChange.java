package witnessmark.desktop.form;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Any change of a text, as one call. */
final class TextChange implements DocumentListener {
    private final Runnable listener;

    TextChange(Runnable listener) {
        this.listener = listener;
    }

    @Override
    public void insertUpdate(DocumentEvent e) {
        listener.run();
    }

    @Override
    public void removeUpdate(DocumentEvent e) {
        listener.run();
    }

    @Override
    public void changedUpdate(DocumentEvent e) {
        // attributes only: the text is the same
    }
}
