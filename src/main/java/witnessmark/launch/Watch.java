package witnessmark.launch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.wording.Texts;

/**
 * Looks after the logbook in the window without being asked: checks it whole once it is open and the window is filled,
 * and backs it up while it changes, so that a verified backup is never older than half an hour of writing.
 */
final class Watch implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Watch.class);
    private static final Duration WINDOW_FILLED = Duration.ofSeconds(3);
    private static final Duration BETWEEN_BACKUPS = Duration.ofMinutes(30);

    private final Texts texts;
    private final Tasks tasks;
    private final Desk desk;
    private final Consumer<List<Problem>> found;
    private final Later check;
    private final Ticking backUps;
    private Instant backedUp = Instant.MIN;

    /** @param found told what a check or a backup came upon, on the event thread */
    Watch(Texts texts, Tasks tasks, Desk desk, Consumer<List<Problem>> found) {
        this.texts = texts;
        this.tasks = tasks;
        this.desk = desk;
        this.found = found;
        this.check = tasks.later(WINDOW_FILLED, this::check);
        this.backUps = tasks.every(BETWEEN_BACKUPS, this::backUp);
        check.poke();
    }

    private void check() {
        tasks.run(texts.get("shell.watch.checking"), () -> desk.logbook().verify(), found, this::failed);
    }

    /** Backs up what was written since the last time; nothing otherwise. */
    void backUp() {
        @Nullable Instant written = desk.lastWritten().orElse(null);
        if (written != null && written.isAfter(backedUp)) {
            tasks.write(
                    texts.get("shell.watch.backing"),
                    () -> desk.logbook().backUp().problems(),
                    problems -> {
                        backedUp = problems.isEmpty() ? written : backedUp;
                        found.accept(problems);
                    },
                    this::failed);
        }
    }

    private void failed(Throwable failure) {
        LOG.error("the logbook could not be looked after: {}", desk.logbook().path(), failure);
    }

    @Override
    public void close() {
        check.cancel();
        backUps.close();
    }
}
