package witnessmark.desktop.shell;

import java.awt.Window;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.task.EventThread;

/**
 * The last resort for what nobody foresaw, on any thread: it goes to the log, and one notice at a time tells people.
 * What breaks again in a place that was told already, as a painter may with every picture, opens no other notice: it is
 * counted, and said at the foot of the window at its first, tenth, hundredth time, and so on.
 */
public final class CrashNotice {
    /** Notices of different faults; by then everybody knows that something is wrong. */
    private static final int MOST = 3;

    private static final int MOST_PLACES = 100;
    private static final int EACH_TIME = 10;
    private static final Logger LOG = Logger.getLogger(CrashNotice.class.getName());

    /** How a notice is shown; returns when it is closed. */
    interface Showing {
        void show(@Nullable Window parent, String where, Throwable failure, IntSupplier repeats);
    }

    private final Supplier<? extends @Nullable Window> parent;
    private final Showing showing;
    private final IntConsumer again;
    private final AtomicBoolean open = new AtomicBoolean();
    private final AtomicInteger repeats = new AtomicInteger();
    private final Set<String> met = ConcurrentHashMap.newKeySet();
    private final AtomicInteger since = new AtomicInteger();

    /**
     * @param parent the window in front, {@code null} while there is none
     * @param again says that it broke again so many times, where it hinders nobody
     */
    public CrashNotice(Supplier<? extends @Nullable Window> parent, CrashDialog dialog, IntConsumer again) {
        this(parent, dialog::show, again);
    }

    CrashNotice(Supplier<? extends @Nullable Window> parent, Showing showing, IntConsumer again) {
        this.parent = parent;
        this.showing = showing;
        this.again = again;
    }

    /**
     * Logs it and tells people, from whichever thread.
     *
     * @param where the name of the thread it happened on
     */
    public void tell(String where, Throwable failure) {
        boolean isNew = met.size() < MOST_PLACES && met.add(place(failure));
        if (isNew) {
            LOG.log(Level.SEVERE, "nobody foresaw this, on " + where, failure);
        }
        if (!isNew || met.size() > MOST) {
            count(where, failure);
            return;
        }
        if (open.compareAndSet(false, true)) {
            repeats.set(0);
            EventThread.later(() -> {
                try {
                    showing.show(parent.get(), where, failure, repeats::get);
                } finally {
                    open.set(false);
                }
            });
        } else {
            repeats.incrementAndGet();
        }
    }

    private void count(String where, Throwable failure) {
        if (open.get()) {
            repeats.incrementAndGet();
            return;
        }
        int times = since.incrementAndGet();
        if (isRound(times)) {
            LOG.log(Level.SEVERE, times + " times since the notice, on " + where, failure);
            EventThread.later(() -> again.accept(times));
        }
    }

    /** 1, 10, 100: saying it is painted too, and must not go on for ever where painting breaks. */
    private static boolean isRound(int times) {
        int left = times;
        while (left % EACH_TIME == 0) {
            left /= EACH_TIME;
        }
        return left == 1;
    }

    private static String place(Throwable failure) {
        StackTraceElement[] stack = failure.getStackTrace();
        return failure.getClass().getName() + (stack.length == 0 ? "" : " " + stack[0]);
    }
}
