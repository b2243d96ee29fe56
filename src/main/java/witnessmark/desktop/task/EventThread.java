package witnessmark.desktop.task;

import javax.swing.SwingUtilities;

/** Guards for code that must, or must not, run on the event thread. */
public final class EventThread {
    private EventThread() {}

    /** @throws IllegalStateException off the event thread */
    public static void require() {
        if (!SwingUtilities.isEventDispatchThread()) {
            throw new IllegalStateException(
                    "only on the event thread, not on " + Thread.currentThread().getName());
        }
    }

    /** @throws IllegalStateException on the event thread, where this work would freeze the window */
    public static void refuse() {
        if (SwingUtilities.isEventDispatchThread()) {
            throw new IllegalStateException("not on the event thread: it would freeze the window");
        }
    }

    /** Runs the action on the event thread after what is already queued there. */
    public static void later(Runnable action) {
        SwingUtilities.invokeLater(action);
    }
}
