package witnessmark.desktop.form;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Keeps the focus on a page whose parts come and go with what it shows. */
public final class FocusStays {
    private FocusStays() {}

    /**
     * Changes what a page shows. Where what had the focus is gone after it, the page's first component gets it, and not
     * whatever stands next in the window.
     *
     * @param first where the page begins after the change
     */
    public static void on(JComponent page, Runnable change, Supplier<JComponent> first) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean within = owner != null && SwingUtilities.isDescendingFrom(owner, page);
        change.run();
        if (within && !owner.isShowing()) {
            first.get().requestFocusInWindow();
        }
    }
}
