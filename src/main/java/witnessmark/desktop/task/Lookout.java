package witnessmark.desktop.task;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Looks at something every few seconds, off the event thread, and tells when what it finds has changed. Where it is not wanted
 * nothing runs. An answer to what was asked before it changed is dropped. To be used on the event thread.
 *
 * @param <T> what a look comes to; equal where nothing has changed
 */
public final class Lookout<T> implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Lookout.class);

    private final Tasks tasks;
    private final String name;
    private final Duration between;
    private final BooleanSupplier wanted;
    private final Callable<T> look;
    private final List<Runnable> listeners = new ArrayList<>();
    private @Nullable Ticking ticking;
    private T last;
    private boolean looking;
    /** How often what is asked was changed. */
    private int changes;

    /**
     * @param name what is being done, in words for people
     * @param wanted whether anything is to be looked at
     * @param look blocks; runs off the event thread
     * @param before what is found before the first look
     */
    public Lookout(Tasks tasks, String name, Duration between, BooleanSupplier wanted, Callable<T> look, T before) {
        this.tasks = tasks;
        this.name = name;
        this.between = between;
        this.wanted = wanted;
        this.look = look;
        this.last = before;
        follow();
    }

    /** Told whenever something else is found or asked. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** What the last look came to. */
    public T last() {
        return last;
    }

    /**
     * What is asked has changed: looks anew.
     *
     * @param meanwhile what is found until then
     */
    public void changed(T meanwhile) {
        changes++;
        last = meanwhile;
        follow();
        look();
        tell();
    }

    /** Looks now, unless a look is under way or none is wanted. */
    public void look() {
        if (looking || !wanted.getAsBoolean()) {
            return;
        }
        looking = true;
        int asked = changes;
        tasks.apart(name, look, now -> answered(now, asked), failure -> {
            looking = false;
            LOG.error("not looked at: {}", name, failure);
        });
    }

    private void answered(T now, int asked) {
        looking = false;
        if (asked == changes) {
            found(now);
        } else {
            look();
        }
    }

    private void found(T now) {
        if (!now.equals(last)) {
            last = now;
            tell();
        }
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    private void follow() {
        Ticking now = ticking;
        boolean on = wanted.getAsBoolean();
        if (on && now == null) {
            ticking = tasks.every(between, this::look);
        } else if (!on && now != null) {
            close();
        }
    }

    @Override
    public void close() {
        Ticking now = ticking;
        if (now != null) {
            now.close();
            ticking = null;
        }
    }
}
