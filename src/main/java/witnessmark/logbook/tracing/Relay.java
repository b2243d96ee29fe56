package witnessmark.logbook.tracing;

import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.Beside;

/**
 * A few buffers that go round between one who fills them and what is done with them beside. Whoever fills them waits when
 * all are away, so that memory stays what it is however long the file.
 *
 * @param <B> what is filled
 */
final class Relay<B> {
    private static final int BUFFERS = 3;

    private final Beside beside;
    private final BlockingQueue<B> free = new ArrayBlockingQueue<>(BUFFERS);
    private volatile @Nullable Throwable failed;

    Relay(Beside beside, Supplier<B> made) {
        this.beside = beside;
        for (int i = 0; i < BUFFERS; i++) {
            free.add(made.get());
        }
    }

    /**
     * A buffer to be filled. Waits for one.
     *
     * @throws RuntimeException what was thrown by what is done with them
     * @throws UncheckedIOException if the thread is interrupted
     */
    B next() {
        try {
            B next = free.take();
            rethrow();
            return next;
        } catch (InterruptedException e) {
            throw new UncheckedIOException(new InterruptedIOException());
        }
    }

    /** Gives it away; it comes round again when the work is done. */
    void give(B full, Consumer<B> work) {
        beside.take(() -> {
            try {
                if (failed == null) {
                    work.accept(full);
                }
            } catch (Throwable t) {
                failed = t; // told to the one who fills them
            } finally {
                free.add(full);
            }
        });
    }

    /**
     * Waits until all are back. They are not used again.
     *
     * @throws RuntimeException as in {@link #next}
     */
    void end() {
        for (int i = 0; i < BUFFERS; i++) {
            next();
        }
    }

    private void rethrow() {
        Throwable thrown = failed;
        if (thrown instanceof RuntimeException exception) {
            throw exception;
        }
        if (thrown instanceof Error error) {
            throw error;
        }
    }
}
