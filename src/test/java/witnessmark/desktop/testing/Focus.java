package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.beans.PropertyChangeListener;
import javax.swing.Timer;

/** Waits for the focus, which a window gets from the system a little later than it asks. Event thread only. */
public final class Focus {
    private static final String OWNER = "permanentFocusOwner";
    private static final int LIMIT_MS = 10_000;

    private Focus() {}

    /** Returns once the component has the focus; events go on being handled meanwhile. */
    public static void await(Component wanted) {
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        if (manager.getPermanentFocusOwner() == wanted) {
            return;
        }
        SecondaryLoop loop = Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
        PropertyChangeListener arrival = e -> {
            if (e.getNewValue() == wanted) {
                loop.exit();
            }
        };
        Timer limit = new Timer(LIMIT_MS, e -> loop.exit());
        manager.addPropertyChangeListener(OWNER, arrival);
        limit.start();
        loop.enter();
        limit.stop();
        manager.removePropertyChangeListener(OWNER, arrival);
        Component owner = manager.getPermanentFocusOwner();
        if (owner != wanted) {
            throw new AssertionError("the focus is on " + (owner == null ? "nothing" : Words.of(owner)) + ", not on "
                    + Words.of(wanted));
        }
    }
}
