package witnessmark.desktop.shell;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** The parts of the window that F6 goes round: rail, page, help, find. Those not in view are passed over. */
final class Panes {
    private final List<Supplier<JComponent>> panes;

    Panes(List<Supplier<JComponent>> panes) {
        this.panes = panes;
    }

    /** @param step 1 for the next, -1 for the one before */
    void move(int step) {
        int at = current();
        for (int tried = 0; tried < panes.size(); tried++) {
            at = Math.floorMod(at + step, panes.size());
            JComponent target = panes.get(at).get();
            if (target.isShowing() && target.isEnabled()) {
                target.requestFocusInWindow();
                return;
            }
        }
    }

    /** The pane that has the focus: the page, unless it is one of the others. */
    private int current() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        for (int i = 0; i < panes.size(); i++) {
            JComponent pane = panes.get(i).get();
            if (owner != null && (owner == pane || SwingUtilities.isDescendingFrom(owner, pane))) {
                return i;
            }
        }
        return 1;
    }
}
