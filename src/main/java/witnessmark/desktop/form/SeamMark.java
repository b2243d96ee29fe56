package witnessmark.desktop.form;

import java.util.Objects;
import javax.accessibility.AccessibleContext;
import javax.swing.JLabel;

/** A witness mark on a page. It never stands alone: its word stands beside it, and screen readers say it here too. */
public final class SeamMark extends JLabel {
    private SeamState state;

    /**
     * @param word the word of the state, from the bundle
     * @param about what it is about and how far, for screen readers: "valve springs, 16.2 of 15 hours"
     */
    public SeamMark(SeamState state, String word, String about) {
        Lettering.plain(this);
        this.state = state;
        show(state, word, about);
    }

    public void show(SeamState next, String word, String about) {
        state = Objects.requireNonNull(next);
        setIcon(new SeamIcon(next));
        setToolTipText(word);
        AccessibleContext context = getAccessibleContext();
        context.setAccessibleName(about.isEmpty() ? word : word + ", " + about);
    }

    public SeamState state() {
        return state;
    }
}
