package witnessmark.desktop.task;

import java.time.Duration;
import javax.swing.Timer;

/** A repeating timer on the event thread. */
public final class Ticking implements AutoCloseable {
    private final Timer timer;

    Ticking(Duration period, Runnable action) {
        timer = new Timer(Math.toIntExact(period.toMillis()), e -> action.run());
        timer.start();
    }

    @Override
    public void close() {
        timer.stop();
    }
}
