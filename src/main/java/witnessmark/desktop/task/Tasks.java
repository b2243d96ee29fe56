package witnessmark.desktop.task;

import java.awt.EventQueue;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Runs work off the event thread: one queue for writes, in the order asked, a small pool for reads, one thread beside them
 * for half of what they do, and one apart for places that may take as long as they like. Answers and failures arrive on the
 * event thread. A failure nobody handles goes to the handler given at construction.
 */
public final class Tasks implements AutoCloseable {
    private static final int READERS = 2;

    private final Thread.UncaughtExceptionHandler unforeseen;
    private final ExecutorService writer = Executors.newSingleThreadExecutor(named("write"));
    private final ExecutorService apart = Executors.newSingleThreadExecutor(named("apart"));
    private final ExecutorService besides = Executors.newSingleThreadExecutor(named("beside"));
    private final ExecutorService readers = Executors.newFixedThreadPool(READERS, named("read"));
    private final List<Running> under = new CopyOnWriteArrayList<>();
    private final Set<Later> waiting = ConcurrentHashMap.newKeySet();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final Object monitor = new Object();

    /** @param unforeseen told of anything an answer's receiver throws */
    public Tasks(Thread.UncaughtExceptionHandler unforeseen) {
        this.unforeseen = unforeseen;
    }

    /**
     * Reads or computes in the pool.
     *
     * @param name what is being done, in words for people
     * @param work runs off the event thread and touches no component
     * @param onDone gets the answer on the event thread
     * @param onFail gets what the work threw, on the event thread
     */
    public <T> Running run(String name, Callable<T> work, Consumer<? super T> onDone, Consumer<Throwable> onFail) {
        return submit(readers, name, work, onDone, onFail);
    }

    /** Like {@link #run}, but one at a time and in the order asked. Every change of a logbook goes this way. */
    public <T> Running write(String name, Callable<T> work, Consumer<? super T> onDone, Consumer<Throwable> onFail) {
        return submit(writer, name, work, onDone, onFail);
    }

    /** Like {@link #run}, for what a stick or a share may hold up: neither reading nor writing waits for it. */
    public <T> Running apart(String name, Callable<T> work, Consumer<? super T> onDone, Consumer<Throwable> onFail) {
        return submit(apart, name, work, onDone, onFail);
    }

    /**
     * Does a piece of what a task is at, beside it: in the order given, one at a time. Nobody is told when it is done. When
     * no more work is taken it is done before this returns.
     */
    public void beside(Runnable piece) {
        try {
            besides.execute(piece);
        } catch (RejectedExecutionException closed) {
            piece.run();
        }
    }

    /** A timer that runs the action once, when it has not been poked for the given while. */
    public Later later(Duration quiet, Runnable action) {
        return new Later(quiet, action, waiting);
    }

    /** A timer that runs the action again and again, for a clock in the window. Stop it with the handle. */
    public Ticking every(Duration period, Runnable action) {
        return new Ticking(period, action);
    }

    /** What is under way or waiting its turn, oldest first. */
    public List<Running> underWay() {
        return List.copyOf(under);
    }

    /** The same without what is done apart, for which nobody ought to wait. */
    public List<Running> awaited() {
        return under.stream().filter(running -> !running.isApart()).toList();
    }

    /** Runs the listener on the event thread whenever work begins or ends. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Whether nothing runs, no answer is on its way and no timer of {@link #later} is set. */
    public boolean idle() {
        return under.isEmpty() && waiting.isEmpty();
    }

    /**
     * For tests: lets every timer fire now and returns when nothing is left to do. On the event thread, events go on
     * being handled meanwhile.
     */
    public void awaitIdle() {
        if (!SwingUtilities.isEventDispatchThread()) {
            awaitIdleElsewhere();
            return;
        }
        EventQueue queue = Toolkit.getDefaultToolkit().getSystemEventQueue();
        SecondaryLoop loop = queue.createSecondaryLoop();
        named("wait")
                .newThread(() -> {
                    awaitIdleElsewhere();
                    loop.exit();
                })
                .start();
        loop.enter();
    }

    /** Lets what is being written finish, for at most five seconds, and takes no more work. */
    @Override
    public void close() {
        readers.shutdownNow();
        besides.shutdown();
        apart.shutdownNow();
        writer.shutdown();
        try {
            if (!writer.awaitTermination(5, TimeUnit.SECONDS)) {
                writer.shutdownNow();
            }
        } catch (InterruptedException e) {
            writer.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }

    private <T> Running submit(
            ExecutorService pool,
            String name,
            Callable<T> work,
            Consumer<? super T> onDone,
            Consumer<Throwable> onFail) {
        Running running = new Running(name, Instant.now(), pool == apart);
        under.add(running);
        tellListeners();
        try {
            pool.execute(() -> perform(running, work, onDone, onFail));
        } catch (RejectedExecutionException closed) {
            deliver(running, () -> onFail.accept(closed));
        }
        return running;
    }

    private <T> void perform(
            Running running, Callable<T> work, Consumer<? super T> onDone, Consumer<Throwable> onFail) {
        if (running.isCancelled()) {
            deliver(running, () -> {});
            return;
        }
        Runnable delivery;
        try {
            T answer = work.call();
            delivery = () -> onDone.accept(answer);
        } catch (Throwable failure) {
            delivery = () -> onFail.accept(failure);
        }
        deliver(running, delivery);
    }

    private void deliver(Running running, Runnable delivery) {
        SwingUtilities.invokeLater(() -> {
            try {
                if (!running.isCancelled()) {
                    delivery.run();
                }
            } catch (RuntimeException | Error failure) {
                unforeseen.uncaughtException(Thread.currentThread(), failure);
            } finally {
                ended(running);
            }
        });
    }

    private void ended(Running running) {
        under.remove(running);
        synchronized (monitor) {
            monitor.notifyAll();
        }
        tellListeners();
    }

    private void tellListeners() {
        SwingUtilities.invokeLater(() -> listeners.forEach(Runnable::run));
    }

    private void awaitIdleElsewhere() {
        try {
            do {
                SwingUtilities.invokeAndWait(() -> List.copyOf(waiting).forEach(Later::now));
                // Where there is no window the event thread ends after a second without an event: it is kept awake.
                synchronized (monitor) {
                    if (!under.isEmpty()) {
                        monitor.wait(100);
                    }
                }
                SwingUtilities.invokeAndWait(() -> {});
            } while (!idle());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("an action that was waiting failed", e.getCause());
        }
    }

    private static ThreadFactory named(String name) {
        return work -> {
            Thread thread = new Thread(work, "witness-mark-" + name);
            thread.setDaemon(true);
            return thread;
        };
    }
}
