package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.beans.PropertyChangeListener;
import java.util.Objects;
import java.util.function.Predicate;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/** Waits for the focus, which a window gets from the system a little later than it asks. Event thread only. */
public final class Focus {
    private static final String OWNER = "permanentFocusOwner";
    private static final int LIMIT_MS = 10_000;

    private Focus() {}

    /** Returns once the component has the focus; events go on being handled meanwhile. */
    public static void await(Component wanted) {
        Component owner = await(o -> o == wanted);
        if (owner != wanted) {
            throw new AssertionError("the focus is on " + (owner == null ? "nothing" : Words.of(owner)) + ", not on "
                    + Words.of(wanted));
        }
    }

    /**
     * What has the focus, or what gets it: while a component that goes away hands it on, nothing has, and the keys a
     * person presses meanwhile are kept for the next one.
     *
     * @throws AssertionError if nothing gets it
     */
    static Component awaitAny() {
        Component now = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        Component owner = now != null ? now : await(Objects::nonNull);
        if (owner == null) {
            throw new AssertionError("nothing has the focus");
        }
        return owner;
    }

    private static @Nullable Component await(Predicate<@Nullable Component> wanted) {
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        if (wanted.test(manager.getPermanentFocusOwner())) {
            return manager.getPermanentFocusOwner();
        }
        SecondaryLoop loop = Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
        PropertyChangeListener arrival = e -> {
            if (wanted.test((Component) e.getNewValue())) {
                loop.exit();
            }
        };
        Timer limit = new Timer(LIMIT_MS, e -> loop.exit());
        manager.addPropertyChangeListener(OWNER, arrival);
        limit.start();
        loop.enter();
        limit.stop();
        manager.removePropertyChangeListener(OWNER, arrival);
        return manager.getPermanentFocusOwner();
    }
}
