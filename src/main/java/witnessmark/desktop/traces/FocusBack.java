package witnessmark.desktop.traces;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Where the focus was on a page while that is out of sight, which would give it to whatever comes next in the window. */
final class FocusBack {
    private @Nullable Component from;

    /** Before the page goes out of sight. */
    void leaving(JComponent page, JComponent stays) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (owner != null && owner != stays && SwingUtilities.isDescendingFrom(owner, page)) {
            from = owner;
        }
    }

    /** Once it is out of sight, the focus goes to what stays, where it was on the page or the page was just come to. */
    void left(JComponent stays, boolean arriving) {
        if (arriving || from != null) {
            stays.requestFocusInWindow();
        }
    }

    /** Back to where it was, or on to where one begins who was just coming. */
    void back(@Nullable JComponent first) {
        Component was = first == null ? from : first;
        from = null;
        if (was != null) {
            was.requestFocusInWindow();
        }
    }
}
