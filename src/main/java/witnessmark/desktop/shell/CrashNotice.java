package witnessmark.desktop.shell;

import java.awt.Window;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.task.EventThread;

/**
 * The last resort for what nobody foresaw, on any thread: it goes to the log, and one notice at a time tells people.
 * Repeats while it is open are counted.
 */
public final class CrashNotice {
    private static final Logger LOG = Logger.getLogger(CrashNotice.class.getName());

    private final Supplier<? extends @Nullable Window> parent;
    private final CrashDialog dialog;
    private final AtomicBoolean open = new AtomicBoolean();
    private final AtomicInteger repeats = new AtomicInteger();

    /** @param parent the window in front, {@code null} while there is none */
    public CrashNotice(Supplier<? extends @Nullable Window> parent, CrashDialog dialog) {
        this.parent = parent;
        this.dialog = dialog;
    }

    /**
     * Logs it and shows the notice, from whichever thread.
     *
     * @param where the name of the thread it happened on
     */
    public void tell(String where, Throwable failure) {
        LOG.log(Level.SEVERE, "nobody foresaw this, on " + where, failure);
        if (open.compareAndSet(false, true)) {
            repeats.set(0);
            EventThread.later(() -> {
                try {
                    dialog.show(parent.get(), where, failure, repeats::get);
                } finally {
                    open.set(false);
                }
            });
        } else {
            repeats.incrementAndGet();
        }
    }
}
