package witnessmark.desktop.task;

import java.time.Duration;
import java.time.Instant;

/** One piece of work under way: what the status strip may say about it, and the handle to call it off. */
public final class Running {
    private final String name;
    private final Instant since;
    private final boolean apart;
    private volatile boolean cancelled;

    Running(String name, Instant since, boolean apart) {
        this.name = name;
        this.since = since;
        this.apart = apart;
    }

    /** What is being done, in words for people. */
    public String name() {
        return name;
    }

    /** Whether it may take as long as a stick or a share does, so that nothing else is to wait for it. */
    public boolean isApart() {
        return apart;
    }

    public Duration age(Instant now) {
        return Duration.between(since, now);
    }

    /**
     * Calls the work off: it is not begun if it has not been, and its answer is not delivered. Work that has begun is
     * never interrupted, since that closes files under it.
     */
    public void cancel() {
        cancelled = true;
    }

    public boolean isCancelled() {
        return cancelled;
    }
}
